package exergue.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What must not be reported. */
class SoundTreesTest {

    private static final String CITING = "title: Coins of the Coast\nlanguage: en\nparts: {body: [catalogue, works]}\n";

    @Test
    void aSoundTreeHasNoFindings() {
        assertEquals(List.of(), new SmallTree().codes());
    }

    @ParameterizedTest
    @CsvSource({"made: cast", "made: machine-struck"})
    void anAxisOfCastAndMachineStruckCoinsIsGivenOnlyIfRecorded(String making) {
        SmallTree tree = new SmallTree().with("types/owl-drachm.yaml", SmallTree.TYPE + making + "\n");
        assertEquals(List.of(), tree.codes());
        assertEquals(List.of(), tree.with("coins/lk-1.yaml", SmallTree.COIN.replace(", axis: 6 h", "")).codes());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"uniface: yes|", "made: punched|", "made: punched|'not applicable: punched'"})
    void noAxisIsAskedForWhereThereIsNone(String line, String axis) {
        String coin = axis == null ? SmallTree.COIN.replace(", axis: 6 h", "") : SmallTree.COIN.replace("6 h", "\"" + axis + "\"");
        assertEquals(List.of(), new SmallTree().with("types/owl-drachm.yaml", SmallTree.TYPE + line + "\n")
                .with("coins/lk-1.yaml", coin).codes());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"18.0 mm | 18.3 mm |", "18 mm | 18 mm |", "18.0 mm | 18.0 mm | dies: {obverse: O2}"})
    void coinsThatOnlyComeNearEachOtherAreTwo(String diameter, String others, String more) {
        SmallTree tree = new SmallTree().with("coins/lk-1.yaml", SmallTree.COIN.replace("18 mm", diameter) + "dies: {obverse: O1}\n");
        tree.with("coins/lk-2.yaml", SmallTree.COIN.replace("lk-1", "lk-2").replace("18 mm", others) + (more == null ? "" : more + "\n"));
        assertEquals(List.of(), tree.codes());
    }

    /** Years that touch are not apart, and where either date is open or unknown nothing can be said. */
    @ParameterizedTest
    @CsvSource({"-0349~/-0264, -0264", "-0349/.., -0200", "../-0264, -0400/-0264~", "-0349~/-0264, -03XX"})
    void aTypeWithinTheYearsOfItsMintAndHoard(String years, String date) {
        SmallTree tree = new SmallTree().with("mints.yaml", "lakonthos: {name: Lakonthos, dates: " + years + "}\n")
                .with("types/owl-drachm.yaml", SmallTree.TYPE + "date: " + date + "\n");
        assertEquals(List.of(), tree.codes());
        tree.with("find-spots.yaml", "valley: {name: The valley, kind: hoard, closed: -0263~}\n");
        assertEquals(List.of(), tree.with("coins/lk-1.yaml", SmallTree.COIN + "find: {spot: valley, number: '1'}\n").codes()
                .stream().filter(code -> !years.contains("..")).toList());
    }

    /** Two balances are seldom at one to the hundredth; without the dies so many coins would agree by chance. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"3.89 g | dies: {obverse: O1, reverse: R1} | coin-entered-twice", "3.89 g | dies: {obverse: O1} |",
        "3.91 g | dies: {obverse: O1, reverse: R1} |", "3.88 g | dies: {obverse: O1} | coin-entered-twice"})
    void coinsOfTheSameDiesMayBeOneThatWasWeighedTwice(String weight, String dies, String code) {
        String coin = SmallTree.COIN.replace("18 mm", "18.2 mm");
        SmallTree tree = new SmallTree().with("coins/lk-1.yaml", coin + dies + "\n");
        tree.with("coins/lk-2.yaml", coin.replace("lk-1", "lk-2").replace("3.87 g", weight) + dies + "\n");
        assertEquals(code == null ? List.of() : List.of(code), tree.codes());
    }

    /** The letter of the other alphabet is a finding of the type alone; how the coin is preserved is none. */
    @Test
    void aLookAlikeInTheTypeIsNoSlipOfTheCoin() {
        SmallTree tree = new SmallTree().with("types/owl-drachm.yaml", SmallTree.TYPE.replace("obverse: {", "obverse: {legend: ΛAKOΝΘΟΣ, "));
        assertEquals(List.of(), tree.with("coins/lk-1.yaml", SmallTree.COIN + "obverse: {legend: 'ΛΑΚΟΝ[ΘΟΣ]'}\n").codes());
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"| A | 12 |\\n| B | 7 |\\n| Total | 19 |", "| A | 12.4 |\\n| B | 7.1 |\\n| Total | 20 |",
        "| A | 12 |\\n| B | c. 7 |\\n| Total | 20 |", "| A | 12 |\\n| Total | 12 |\\n| B | 7 |\\n| Total | 7 |", "| 1890 | 12 |\\n| 1891 | 7 |"})
    void totalsThatAddUpOrCannotBeAdded(String rows) {
        assertEquals(List.of(), new SmallTree().with("coins/lk-1.yaml", SmallTree.COIN + "note: |\n  | Trench | Coins |\n  | --- | --- |\n  "
                + rows.replace("\\n", "\n  ") + "\n").codes());
    }

    @Test
    void twoSidesInOnePhotographAreOfOneCoin() {
        assertEquals(List.of(), new SmallTree().with("coins/lk-1.yaml", SmallTree.COIN + "photograph: {obverse: p/a.jpg, reverse: p/a.jpg, "
                + "width: 20 mm, credit: the museum, permission: not needed}\n").codes());
    }

    @Test
    void aFigureThatCannotBeReadIsNotCalledMissingToo() {
        SmallTree tree = new SmallTree().with("coins/lk-1.yaml", SmallTree.COIN.replace("3.87 g", "three grams"));
        assertTrue(tree.read().findings().hasErrors());
        assertEquals(List.of(), tree.codes());
    }

    @Test
    void aFigureThatOneOfTheHandsGivesIsNotMissing() {
        SmallTree tree = new SmallTree().withSecondHand("weight: 3.87 g, axis: 6 h");
        tree.with("coins/lk-1.yaml", "id: lk-1\ntype: owl-drachm\nmeasured: {by: bench, diameter: 18 mm}\n"
                + "also-measured:\n  - {by: list, weight: 3.87 g, axis: 6 h}\n");
        assertEquals(List.of(), tree.codes());
    }

    @ParameterizedTest
    @CsvSource({"square, 18 x 17 mm", "rectangular, 14-18 mm", "round, 18 mm", "oval, 18 mm"})
    void flansAndTheirFigures(String shape, String diameter) {
        assertEquals(List.of(), new SmallTree().with("types/owl-drachm.yaml", SmallTree.TYPE + "shape: " + shape + "\n")
                .with("coins/lk-1.yaml", SmallTree.COIN.replace("18 mm", diameter)).codes());
    }

    @Test
    void aReasonForAnExceptionIsNoFault() {
        assertEquals(List.of(), new SmallTree().with("coins/lk-1.yaml", SmallTree.COIN
                + "damage: [chipped]\nweight-counts: {counts: yes, why: a chip of less than 0.01 g}\n").codes());
        assertEquals(List.of(), new SmallTree().with("coins/lk-1.yaml", SmallTree.COIN
                + "weight-counts: {counts: no, why: plated}\n").codes());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"-0197 | -0211/-0197", "-0250/-0211 | -0211/-0197", "-01XX | -0211/-0197", "../-0211 | -0211/-0197",
        "0205 | -0211/.."})
    void aDateThatHasOneYearOfTheReignIsInIt(String date, String reign) {
        assertEquals(List.of(), new SmallTree().with("rulers.yaml", "archon: {name: Archon, dates: " + reign + "}\n")
                .with("types/owl-drachm.yaml", SmallTree.TYPE + "ruler: archon\ndate: " + date + "\n").codes());
    }

    @ParameterizedTest
    @CsvSource({"-0277", "-0276", "-0299/-0277", "-0276/.."})
    void aYearOfAnEraIsInBothItsYears(String date) {
        // year 35 of an era that began in 312 BC is 278/7 BC
        assertEquals(List.of(), new SmallTree().with("house-style.yaml", "eras:\n  ardian: {sign: year, year-one: -0311}\n")
                .with("types/owl-drachm.yaml", SmallTree.TYPE + "date: " + date + "\nera-date: {era: ardian, year: 35}\n").codes());
    }

    /** States in one order, a die of two types of one denomination, and numbers that begin anew with each type. */
    @Test
    void diesThatHangTogetherAreSound() {
        String state = "dies: {obverse: {die: O1, state: %d}, reverse: R%d}\n";
        assertEquals(List.of(), new SmallTree().withCoin("lk-2", "3.88 g", String.format(Locale.ROOT, state, 1, 1))
                .withCoin("lk-3", "3.89 g", String.format(Locale.ROOT, state, 2, 2))
                .withCoin("lk-4", "3.90 g", String.format(Locale.ROOT, state, 2, 1)).codes());
        SmallTree anew = new SmallTree().withCoin("lk-2", "3.88 g", "dies: {obverse: O1}\n").with("house-style.yaml", "die-names: by type\n")
                .with("types/owl-obol.yaml", SmallTree.TYPE.replace("owl-drachm", "owl-obol").replace("drachm", "obol"))
                .with("coins/lk-3.yaml", SmallTree.COIN.replace("lk-1", "lk-3").replace("owl-drachm", "owl-obol") + "dies: {obverse: O1}\n");
        assertEquals(List.of(), anew.codes());
    }

    /** Remains, breaks, other forms of a letter, marked faults of the cutter, and legends that are another altogether. */
    @ParameterizedTest
    @ValueSource(strings = {"ΛΑΚΟΝΘ[ΙΩΝ ΔΗΜΟΥ]", "[ΛΑΚΟ]ΝΘΙΩΝ – ΔΗΜΟΥ", "[....]ΝΘΙΩΝ ΔΗΜΟΥ", "[– – –]ΩΝ ΔΗΜΟΥ", "ΛΑΚΟΝΘΙΩΝ Δ(ΗΜΟΥ)",
        "ΛΑΚΟΝ⟨Θ⟩ΙΩΝ ΔΗΜΟΥ", "ΛΑΚΟ{Ο}ΝΘΙΩΝ ΔΗΜΟΥ", "ΛΑΚ", "ΑΝΔΡΩΝΟϹ ΑΡΧΟΝΤΟϹ", "ΛΑ̣Κ̣ΟΝΘΙΩΝ | ΔΗΜΟΥ"})
    void legendsThatAreWhatIsLeftOfThatOfTheTypeOrAnother(String legend) {
        assertEquals(List.of(), new SmallTree().with("types/owl-drachm.yaml", SmallTree.TYPE.replace("ΛΑΚ", "ΛΑΚΟΝΘΙΩΝ ΔΗΜΟΥ"))
                .with("coins/lk-1.yaml", SmallTree.COIN + "reverse: {legend: \"" + legend + "\"}\n").codes());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"sale of 1897, lot 1502 | 1897", "bought before 1880 | 1875", "an old collection, by 1868 | 1860~",
        "in trade 1868–71 | 1870", "lot 1502 of a sale | 1897", "given to the museum | 1911", "sale of 1897 | 189X", "inv. 1913 | 1958"})
    void wordsAndDatesOfAProvenanceThatGoTogether(String words, String date) {
        assertEquals(List.of(), new SmallTree().with("coins/lk-1.yaml", SmallTree.COIN + "provenance:\n  - {words: \"" + words
                + "\", date: " + date + "}\n").codes());
    }

    @ParameterizedTest
    @ValueSource(strings = {"pp. 198–214", "214–18", "7–9", "12-3", "1.4-2", "pl. IV, 12", "SV 12/40", "12 P", "P 312", "p. 12", "no. 4",
        "Hallamshire 3"})
    void numbersThatCanBeLookedUp(String number) {
        assertEquals(List.of(), new SmallTree().with("works.yaml", "hallam: {sign: Hallam, title: Coins}\n")
                .with("catalogue.yaml", CITING)
                .with("coins/lk-1.yaml", SmallTree.COIN + "references: [{work: hallam, number: '" + number + "'}]\n").codes());
    }

    @ParameterizedTest
    @ValueSource(strings = {"p. 12", "vol. 2", "pl. IV", "'14'"})
    void onePageOrPlateCanShowTwoCoins(String number) {
        String claim = "references: [{work: hallam, number: " + number + ", relation: this coin}]\n";
        assertEquals(List.of(), new SmallTree().with("works.yaml", "hallam: {sign: Hallam, title: Coins}\n")
                .with("catalogue.yaml", CITING)
                .with("coins/lk-1.yaml", SmallTree.COIN + claim)
                .withCoin("lk-2", "3.91 g", number.equals("'14'") ? claim.replace("this coin", "same dies") : claim).codes());
    }

    @Test
    void aLegendOnTheOneSideOfAUnifaceCoinIsNoSecondSide() {
        assertEquals(List.of(), new SmallTree().with("types/owl-drachm.yaml", SmallTree.TYPE + "uniface: yes\n")
                .with("coins/lk-1.yaml", SmallTree.COIN.replace(", axis: 6 h", "") + "reverse: {legend: \"ΛΑ[Κ]\"}\ndies: {reverse: R1}\n").codes());
    }
}
