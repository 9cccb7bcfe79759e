package exergue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.finding.Code;
import exergue.measure.ReadingFault;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * No kind of finding is only promised: each has a small tree that is broken in that way, or is a fault of a reading
 * (whose sample is read in {@code BrokenTreesTest}), or a test that makes it happen and is named here.
 */
class EveryCodeIsRaisedTest {

    private static final Path BROKEN = Path.of("src/test/resources/broken");
    private static final Path TESTS = Path.of("src/test");

    /** What no tree that lies in a repository can show: bytes, engines, styles, and what a printer asks about. */
    private static final Map<String, List<String>> BY_TEST = new TreeMap<>(Map.ofEntries(
            Map.entry("java/exergue/photo/print/DarkroomTest.java", List.of("photograph-unprintable", "coin-not-cut-out",
                    "two-sides-in-one-file", "highlights-clipped")),
            Map.entry("java/exergue/edition/PlateTonesTest.java", List.of("light-differs-on-plate")),
            Map.entry("java/exergue/source/BrokenTreesTest.java", List.of("control-character", "file-too-large",
                    "no-catalogue-file", "not-composed", "not-utf-8", "paragraph-too-long", "tangled-prose")),
            Map.entry("resources/golden/cite/other-files/findings.txt", List.of("citation-style-refused")),
            Map.entry("java/exergue/cite/WorksSetterTest.java", List.of("not-a-citation-style")),
            Map.entry("java/exergue/exchange/MeasurementSheetTest.java", List.of("sheet-not-a-table", "sheet-unknown-column",
                    "sheet-unknown-ticket", "sheet-row-without-figure", "sheet-label-twice")),
            Map.entry("resources/golden/exchange/list/messages.txt", List.of("list-not-a-table", "list-encoding", "list-encoding-taken",
                    "list-heading-not-there", "list-column-unclaimed", "list-sign-unanswered", "list-unknown-word", "list-type-unclear",
                    "list-row-without-id", "list-coin-twice", "list-row-like-a-sum", "list-cell-without-heading", "list-differs-from-entry",
                    "list-says-more", "list-figures-not-added", "list-exact-place", "list-file-incomplete", "list-too-large")),
            Map.entry("java/exergue/typeset/CoverageTest.java", List.of("missing-letter")),
            Map.entry("java/exergue/typeset/TrustTest.java", List.of("outside-resource", "page-engine-remark",
                    "picture-missing", "picture-unreadable", "template-fault", "template-markup")),
            Map.entry("java/exergue/typeset/ListingsTest.java", List.of("pages-unsettled")),
            Map.entry("java/exergue/typeset/TooWideTest.java", List.of("too-wide")),
            Map.entry("java/exergue/photo/PictureCheckTest.java", List.of("axis-not-as-photographed", "diameter-not-as-photographed",
                    "photograph-not-measured", "photograph-not-read", "width-not-as-scale-bar")),
            Map.entry("java/exergue/typeset/PressCheckTest.java", List.of("low-resolution", "no-bleed", "rgb-pictures",
                    "sheets-not-filled"))));

    static List<String> codes() {
        return AllCodes.all().stream().map(Code::id).toList();
    }

    @ParameterizedTest
    @MethodSource("codes")
    void somethingRaisesIt(String code) throws IOException {
        if (Files.isDirectory(BROKEN.resolve(code)) || ofReadings().contains(code)) {
            return;
        }
        Optional<String> named = BY_TEST.keySet().stream().filter(file -> BY_TEST.get(file).contains(code)).findFirst();
        assertTrue(named.isPresent(), "no tree src/test/resources/broken/" + code + ", and no test is named here");
        String test = Files.readString(TESTS.resolve(named.get()));
        assertTrue(Pattern.compile("(?<![\\w-])" + code + "(?![\\w-])").matcher(test).find(),
                named.get() + " does not speak of " + code);
    }

    @Test
    void theListNamesNothingThatHasATreeOrIsGone() {
        assertEquals(List.of(), BY_TEST.values().stream().flatMap(List::stream).filter(code -> !codes().contains(code)
                || ofReadings().contains(code) || Files.isDirectory(BROKEN.resolve(code))).toList());
    }

    private static Set<String> ofReadings() {
        return Arrays.stream(ReadingFault.values()).map(ReadingFault::id).collect(Collectors.toSet());
    }
}
