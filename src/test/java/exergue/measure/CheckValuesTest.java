package exergue.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Readings against published values. A value agrees if it is the same to the last digit that was published. */
class CheckValuesTest {

    @ParameterizedTest(name = "{0} {1} [{2}] is {3}: {4}, {5}")
    @CsvFileSource(resources = "/exergue/measure/check-values.csv", delimiter = '|', numLinesToSkip = 1, quoteCharacter = '~')
    void published(Kind kind, String text, String convention, BigDecimal value, String known, String source) {
        BigDecimal exact = Hints.read(kind, text, convention).first().value();
        assertEquals(value, exact.setScale(value.scale(), RoundingMode.HALF_EVEN));
    }

    @Test
    void everyUnitIsCheckedAndSixtyValuesArePublished() throws IOException {
        List<String[]> rows = Files.readAllLines(Path.of("src/test/resources/exergue/measure/check-values.csv")).stream().skip(1)
                .map(line -> line.split("\\|")).toList();
        Set<Unit> checked = rows.stream().flatMap(row -> Hints.read(Kind.valueOf(row[0]), row[1], row[2]).asRecorded().stream())
                .map(Quantity::unit).collect(Collectors.toSet());
        assertEquals(List.of(), Units.all().stream().filter(unit -> !unit.isNormal() && !checked.contains(unit)).map(Unit::id).toList());
        assertTrue(rows.stream().filter(row -> !row[4].equals("common practice")).count() >= 60);
    }

    @ParameterizedTest(name = "size {0} is {1}, {2}, {3}, {4} and {5} mm: seen, Caley 1965 as quoted")
    @CsvFileSource(resources = "/exergue/measure/caley-sizes.csv", delimiter = '|', numLinesToSkip = 1)
    void caley(int size, String mionnet, String leake, String dickeson, String prime, String head) {
        agrees("mionnet-1805", size, mionnet);
        agrees("leake-1854", size, leake);
        agrees("dickeson-1859", size, dickeson);
        agrees("prime-1861", size, prime);
        agrees("head-1887", size, head);
    }

    private static void agrees(String scale, int size, String millimetres) {
        if (millimetres == null) {
            assertEquals(ReadingFault.SIZE_NOT_IN_TABLE, Hints.refusal(Kind.DIAMETER, "size " + size, "scale=" + scale).fault());
        } else {
            Reading.Read read = Hints.read(Kind.DIAMETER, "Mionnet " + size, "scale=" + scale);
            assertEquals(new BigDecimal(millimetres), read.first().value());
            assertEquals(BigDecimal.ONE, read.first().resolution());
            assertEquals(scale, SizeScale.of(read.asRecorded().get(0).unit()).orElseThrow().id());
            assertTrue(read.converted());
        }
    }

    @Test
    void aBareFigureIsASizeWhereTheConventionCountsInSizes() {
        assertEquals("21 mm", Hints.printed(Kind.DIAMETER, "5", "scale=mionnet-1805"));
        assertEquals("18 mm", Hints.printed(Kind.DIAMETER, "18 mm", "scale=mionnet-1805"));
    }

    @Test
    void noSizeIsPutBetweenOrBeyondTheTable() {
        assertTrue(Hints.refusal(Kind.DIAMETER, "size 5½", "scale=mionnet-1805").remedy()
                .contains("size 5 (21.2 mm) and size 6 (23.7 mm)"));
        assertTrue(Hints.refusal(Kind.DIAMETER, "size 30", "scale=leake-1854").remedy()
                .contains("size 11 (37.5 mm) and size 12 (39.7 mm)"));
        assertTrue(Hints.refusal(Kind.DIAMETER, "size 0", "scale=leake-1854").remedy().contains("size 1 (9.3 mm)"));
    }

    @Test
    void aSizeWithoutAPrintingNamesAllFive() {
        String remedy = Hints.refusal(Kind.DIAMETER, "Mionnet 5", "").remedy();
        SizeScale.all().forEach(scale -> assertTrue(remedy.contains(scale.id()), remedy));
    }
}
