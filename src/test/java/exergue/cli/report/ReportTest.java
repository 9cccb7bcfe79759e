package exergue.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.Golden;
import exergue.files.MemoryTree;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.finding.Place;
import exergue.finding.Severity;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The same findings in every format, compared with approved texts. */
class ReportTest {

    private static final Code SPELLING = new Code("unknown-key", Severity.ERROR, "The key is not known here",
            "What stands under an unknown key would be lost without a word.", "wieght: 3 g", "weight: 3 g");
    private static final Code FAR_OFF = new Code("weight-far-off", Severity.WARNING, "The weight is far off its type's",
            "A slip of the pen is likelier than a monster.", "weight: 38.7 g", "weight: 3.87 g");
    private static final Code REMARK = new Code("spare-file", Severity.NOTE, "A file that nothing uses",
            "It may have been forgotten.", "coin/lk-1.yaml", "coins/lk-1.yaml");

    private static final MemoryTree TREE = MemoryTree.ofText(Map.of(
            "coins/lk-1.yaml", "\uFEFFid: lk-1\r\nmeasured:\r\n\twieght: 3.87 g\r\n",
            "coins/lk-2.yaml", "note: e\u0301t\u00E9 \uD83D\uDE00 \u6F22\u5B57 here 38.7 g\n"
                    + "legend: ΒΑΣΙΛΕΩΣ\u001B[31m\u202E\n"
                    + "long: " + "word ".repeat(30) + "target " + "word ".repeat(30) + "\n"));

    static final Findings FINDINGS = Findings.of(List.of(
            Finding.of(SPELLING, new Place("coins/lk-1.yaml", 3, 2, 6), "measured.wieght",
                    "“wieght” is not a key of a measurement.", "Did you mean “weight”?")
                    .withEdit("weight").withRelated(new Place("coins/lk-1.yaml", 1, 1, 2), "the coin begins here"),
            Finding.of(FAR_OFF, new Place("coins/lk-2.yaml", 1, 22, 6), "measured.weight",
                    "38.7 g is ten times the usual weight of the type.", "Look at the decimal point."),
            Finding.of(SPELLING, new Place("coins/lk-2.yaml", 2, 9, 0), "legend",
                    "“ΒΑΣ\u001B[31mΙΛΕΩΣ\n” turns the\u202E screen.", "Take the control characters out."),
            Finding.of(FAR_OFF, new Place("coins/lk-2.yaml", 3, 157, 6), "", "“target” is far along.", "Look closely."),
            Finding.of(SPELLING, new Place("coins/lk-2.yaml", 99, 1, 1), "", "The line is not there.", "Nothing to show."),
            Finding.of(REMARK, Place.ofFile("odd näme 1.txt"), "", "Nothing uses this file.", "Delete or move it.")));

    private static String render(Format format, Ink ink) {
        return format.render(new Report(FINDINGS, TREE, "catalogue-src"), ink);
    }

    @ParameterizedTest
    @EnumSource(Format.class)
    void everyFormatIsAsApproved(Format format) {
        String ending = format.forMachines() ? format + ".json" : format + ".txt";
        Golden.check(Path.of("src/test/resources/golden/cli/report", ending), render(format, Ink.PLAIN));
    }

    @ParameterizedTest
    @EnumSource(Format.class)
    void nothingFromTheSourceReachesTheTerminalAsACommand(Format format) {
        String text = render(format, Ink.PLAIN);
        assertFalse(text.contains("\u001B"), "an escape character");
        if (!format.forMachines()) {
            assertFalse(text.contains("\u202E"), "a hidden change of writing direction");
        }
    }

    @ParameterizedTest
    @EnumSource(Format.class)
    void withoutFindingsTheTextsAreEmptyAndTheRestIsValid(Format format) {
        String text = format.render(new Report(Findings.none(), TREE, "."), Ink.PLAIN);
        assertEquals(format.forMachines(), !text.isEmpty());
    }

    @Test
    void coloursAreOnlyAddedNeverChangeTheWords() {
        String coloured = render(Format.FULL, Ink.COLOURED);
        assertTrue(coloured.contains("\u001B[1;31m"));
        assertEquals(render(Format.FULL, Ink.PLAIN), coloured.replaceAll("\u001B\\[[0-9;]*m", ""));
    }

    @ParameterizedTest
    @CsvSource({
        "catalogue-src, coins/a.yaml, catalogue-src/coins/a.yaml",
        "catalogue-src/, coins/a.yaml, catalogue-src/coins/a.yaml",
        "., coins/a.yaml, coins/a.yaml",
        "/home/me, a.yaml, /home/me/a.yaml",
    })
    void placesAreSeenFromWhereTheCommandWasStarted(String source, String file, String seen) {
        assertEquals(seen, new Report(Findings.none(), TREE, source).seen(file));
    }
}
