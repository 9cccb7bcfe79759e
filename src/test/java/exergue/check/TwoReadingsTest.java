package exergue.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.finding.Finding;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The first hand has 3.87 g, 18 mm and 6 h. The usual spreads are common practice, no source. */
class TwoReadingsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "weight: 3.87 g", "weight: 3.91 g", "weight: 3.9 g", "weight: 59.7 grains", "weight: \"3.78 g ?\"", "weight: c. 3.5 g",
        "weight: < 5 g", "diameter: 18.5 mm", "diameter: 17-19 mm", "diameter: 19 x 17 mm", "diameter: 0.70 in",
        "axis: 5 h", "axis: 7 h", "axis: 180°", "axis: 210°", "axis: 'missing: worn'"})
    void handsAgree(String reading) {
        SmallTree tree = new SmallTree().withSecondHand(reading);
        assertFalse(tree.read().findings().hasErrors(), tree.read().findings().all()::toString);
        assertEquals(List.of(), tree.codes());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "weight: 3.78 g      | two digits swapped (“3.78 g” for “3.87 g”, or the other way round)",
        "weight: 59.7 g      | one unit taken for another (“59.7 g” for “59.7 gr”, which is 3.87 g)",
        "weight: 3.87 grains | one unit taken for another (“3.87 grains” for “3.87 g”)",
        "weight: 2.49 g      | one unit taken for another (“2.49 g” for “2.49 dwt”, which is 3.87 g)",
        "weight: 0.387 g     | the decimal point one place off (“0.387 g” for “3.87 g”, or the other way round)",
        "weight: 3.37 g      | one digit read for another of like shape (“3.37 g” for “3.87 g”, or the other way round)",
        "weight: 3.60 g      | No usual slip explains it",
        "diameter: 81 mm     | two digits swapped (“81 mm” for “18 mm”, or the other way round)",
        "diameter: 24-26 mm  | No usual slip explains it",
        "axis: 12 h          | half a turn, as when 6 h and 12 h are confused",
        "axis: 0°            | half a turn, as when 6 h and 12 h are confused",
        "axis: 9 h           | No usual slip explains it"})
    void handsDisagreeAndTheMessageNamesTheSlip(String reading, String cause) {
        List<Finding> findings = new SmallTree().withSecondHand(reading).findings();
        assertEquals(List.of("hands-disagree"), findings.stream().map(f -> f.code().id()).toList());
        assertTrue(findings.get(0).what().contains(cause), findings.get(0).what());
    }

    @Test
    void anAxisOnTheMirrorImageIsNamed() {
        SmallTree tree = new SmallTree().withSecondHand("axis: 7 h");
        tree.with("coins/lk-1.yaml", SmallTree.COIN.replace("6 h", "5 h") + "also-measured:\n  - {by: list, axis: 210°}\n");
        assertTrue(tree.findings().get(0).what().contains("mirror image"), tree.findings()::toString);
    }

    @Test
    void ofThreeHandsTheOddOneIsReportedOnce() {
        SmallTree tree = new SmallTree().withSecondHand("weight: 3.87 g");
        tree.with("coins/lk-1.yaml", SmallTree.COIN.replace("3.87 g", "3.78 g")
                + "also-measured:\n  - {by: list, weight: 3.87 g}\n  - {by: list, weight: 3.88 g}\n");
        assertEquals(List.of("measured.weight"), tree.findings().stream().map(Finding::path).toList());
        Finding finding = tree.findings().get(0);
        assertTrue(finding.what().contains("0.09 g apart; the figure under “list” is against “bench” as well."), finding.what());
        assertEquals(2, finding.related().size());
    }

    @ParameterizedTest(name = "{0} is not explained by cleaning")
    @CsvSource({"7.2 g", "2.9 g"})
    void cleaningTakesLittleOff(String weight) {
        SmallTree tree = new SmallTree().withSecondHand("weight: " + weight);
        String said = tree.findings().get(0).what();
        assertTrue(said.contains("No usual slip explains it"), said);
    }

    @Test
    void theFindingStandsAtTheLaterFigureAndPointsToTheEarlier() {
        Finding finding = new SmallTree().withSecondHand("weight: 3.78 g").findings().get(0);
        assertEquals("coins/lk-1.yaml:5:24", finding.place().toString());
        assertEquals("coins/lk-1.yaml:3:31", finding.related().get(0).place().toString());
        assertEquals("also-measured[1].weight", finding.path());
    }
}
