package exergue.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.files.MemoryTree;
import exergue.finding.Finding;
import exergue.model.Catalogue;
import exergue.source.Loaded;
import exergue.source.SourceReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Entries held against photographs of which the measures are known. */
class PictureCheckTest {

    private static final ReadPicture.Kind KIND = new ReadPicture.Kind(ReadPicture.Format.JPEG, ReadPicture.Colours.RGB, 8);
    /** 20 pixels to the millimetre; a picture 600 pixels wide is 30 mm wide. */
    private static final double PIXELS = 20;
    private static final Outline FLAN = uneven().times(PIXELS * 9).moved(300, 300);

    @ParameterizedTest
    @CsvSource({"7 h", "7:30", "6 h", "210°", "200°", "8 h", "'missing: lost'"})
    void axisWithinAnHourIsNoFinding(String axis) throws IOException {
        assertEquals(List.of(), findings(entry("18.0 mm", axis, "30 mm"), shown(FLAN), shown(turnedOver(210)))
                .stream().filter(finding -> finding.code().id().equals("axis-not-as-photographed")).toList());
    }

    @Test
    void axisOnTheMirrorImageIsNamed() throws IOException {
        Finding finding = findings(entry(taken(FLAN.vertical()), "5 h", "30 mm"), shown(FLAN), shown(turnedOver(210))).get(0);
        assertEquals("axis-not-as-photographed", finding.code().id());
        assertEquals("measured.axis", finding.path());
        assertEquals("The axis “5 h” of “lk-1” is not that of its photographs: as they stand, the edges fit at 7 h (210°). Probable "
                + "cause: the axis read on the mirror image or counted anticlockwise (“5 h” for “7 h”).", finding.what());
    }

    @Test
    void axisHalfATurnOffIsNamed() throws IOException {
        Finding finding = findings(entry(taken(FLAN.vertical()), "1 h", "30 mm"), shown(FLAN), shown(turnedOver(210))).get(0);
        assertTrue(finding.what().contains("half a turn"), finding.what());
    }

    @Test
    void axisOffWithoutASlipHasNoCause() throws IOException {
        Finding finding = findings(entry(taken(FLAN.vertical()), "10 h", "30 mm"), shown(FLAN), shown(turnedOver(210))).get(0);
        assertTrue(finding.what().endsWith("the edges fit at 7 h (210°)."), finding.what());
    }

    /** The convention says top to bottom; the flan is wider than high. */
    @Test
    void diameterIsTakenAlongTheLineOfItsConvention() throws IOException {
        assertTrue(FLAN.greatest().length() > 1.06 * FLAN.vertical());
        assertEquals(List.of(), findings(entry(taken(FLAN.vertical()), "7 h", "30 mm"), shown(FLAN), shown(turnedOver(210))));
        Finding finding = findings(entry(taken(FLAN.greatest().length()), "7 h", "30 mm"), shown(FLAN), shown(turnedOver(210))).get(0);
        assertEquals("diameter-not-as-photographed", finding.code().id());
        assertTrue(finding.what().contains("top to bottom, by the width that the entry gives"), finding.what());
    }

    /** Where nobody says along which line it was taken, any diameter that the coin has may be meant. */
    @Test
    void diameterOfAnUnknownLineIsHeldAgainstAllOfThem() throws IOException {
        for (double any : new double[] {FLAN.least().length(), FLAN.vertical(), FLAN.meanDiameter(), FLAN.greatest().length()}) {
            assertEquals(List.of(), findings(unsaid(taken(any)), shown(FLAN), shown(turnedOver(210))));
        }
        assertTrue(findings(unsaid(taken(1.1 * FLAN.greatest().length())), shown(FLAN), shown(turnedOver(210))).get(0).what()
                .contains(taken(FLAN.greatest().length()) + ", the greatest, by the width"));
        assertTrue(findings(unsaid(taken(0.9 * FLAN.least().length())), shown(FLAN), shown(turnedOver(210))).get(0).what()
                .contains(taken(FLAN.least().length()) + ", the least, by the width"));
    }

    private static Map<String, String> unsaid(String diameter) {
        Map<String, String> entry = entry(diameter, "7 h", "30 mm");
        entry.put("conventions.yaml", entry.get("conventions.yaml").replace("direction: top to bottom, ", ""));
        return entry;
    }

    @Test
    void scaleBarGoesBeforeTheWidthAndIsHeldAgainstIt() throws IOException {
        Gauged.Measured bar = new Gauged.Measured(600, 600, KIND, OptionalDouble.empty(), found(FLAN),
                new ScaleBarRead.Read(25, 20, 0.01, 90, new Point(0, 0), new Point(500, 0)));
        List<Finding> findings = findings(entry(taken(FLAN.vertical()), "7 h", "30 mm"), bar, shown(turnedOver(210)));
        assertEquals(List.of("diameter-not-as-photographed", "width-not-as-scale-bar"),
                findings.stream().map(finding -> finding.code().id()).sorted().toList());
        Finding width = findings.stream().filter(f -> f.code().id().startsWith("width")).findFirst().orElseThrow();
        assertTrue(width.remedy().startsWith("Write “width: 24.0 mm”"), width.remedy());
    }

    /** Nothing on a bar says what its divisions are; each is taken to be a millimetre. */
    @ParameterizedTest
    @CsvSource({"10, half a millimetre", "40, two millimetres", "100, five millimetres", "200, ten millimetres", "25, ''"})
    void aBarOfOtherDivisionsIsGivenAwayByTheDiameter(double pixels, String words) throws IOException {
        Gauged.Measured bar = new Gauged.Measured(600, 600, KIND, OptionalDouble.empty(), found(FLAN),
                new ScaleBarRead.Read(pixels, 20, 0.01, 90, new Point(0, 0), new Point(500, 0)));
        String what = findings(entry(taken(FLAN.vertical()), "7 h", "30 mm"), bar, shown(turnedOver(210))).stream()
                .filter(finding -> finding.code().id().startsWith("diameter")).findFirst().orElseThrow().what();
        assertTrue(what.endsWith(words.isEmpty() ? "by the scale bar." : " It would be, were each division of the bar " + words + " and not one."), what);
    }

    @Test
    void whatCannotBeMeasuredIsSaid() throws IOException {
        List<Finding> findings = findings(entry("18 mm", "7 h", "30 mm"), new Gauged.Measured(600, 600, KIND, OptionalDouble.empty(),
                new Outlined.Refused(Outlined.Reason.CUT_BY_FRAME), new ScaleBarRead.NotRead(ScaleBarRead.Reason.NONE)),
                new Gauged.NotRead(ReadPicture.Reason.DAMAGED, "it is damaged or not complete"));
        assertEquals(List.of("photograph-not-measured", "photograph-not-read"), findings.stream().map(f -> f.code().id()).sorted().toList());
        assertTrue(findings.stream().anyMatch(f -> f.what().equals(
                "The photograph “p/obv.jpg” of “lk-1” cannot be measured: the coin is cut by the edge of the picture.")));
    }

    @Test
    void bothSidesInOneFileAreTwoSides() throws IOException {
        Gauged.Measured both = new Gauged.Measured(1200, 600, KIND, OptionalDouble.empty(), new Outlined.Found(
                List.of(FLAN, turnedOver(210).moved(600, 0)), 1, Background.of(1, 1, 1, 0)), new ScaleBarRead.NotRead(ScaleBarRead.Reason.NONE));
        Map<String, String> entry = entry(taken(FLAN.vertical()), "5 h", "60 mm");
        entry.put("coins/lk-1.yaml", entry.get("coins/lk-1.yaml").replace(", reverse: p/rev.jpg", ""));
        assertEquals(List.of("axis-not-as-photographed"), findings(entry, both, both).stream().map(f -> f.code().id()).toList());
    }

    private static List<Finding> findings(Map<String, String> texts, Gauged obverse, Gauged reverse) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        texts.forEach((path, text) -> files.put(path, text.getBytes(StandardCharsets.UTF_8)));
        for (String picture : List.of("p/obv.jpg", "p/rev.jpg")) {
            files.put(picture, new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF}); // begins as a JPEG; what it shows is given below
        }
        Loaded loaded = SourceReader.read(new MemoryTree(files));
        assertFalse(loaded.findings().hasErrors(), loaded.findings().toString());
        Catalogue catalogue = loaded.catalogue().orElseThrow();
        return PictureCheck.check(catalogue, path -> Optional.of(path.equals("p/obv.jpg") ? obverse : reverse)).all();
    }

    private static Map<String, String> entry(String diameter, String axis, String width) {
        return new TreeMap<>(Map.of("catalogue.yaml", "title: T\nlanguage: en\nparts: {body: [catalogue]}\n",
                "mints.yaml", "lakonthos: {name: Lakonthos}\n",
                "types/owl.yaml", "id: owl\nmint: lakonthos\ndenomination: drachm\nmetal: silver\nobverse: {description: Owl}\n",
                "conventions.yaml", "bench: {title: bench, diameter: {direction: top to bottom, resolution: 0.1 mm}, axis: {notation: hours}}\n",
                "coins/lk-1.yaml", "id: lk-1\ntype: owl\nmeasured: {by: bench, diameter: " + diameter + ", axis: '" + axis.replace("'", "")
                        + "'}\nphotograph: {obverse: p/obv.jpg, reverse: p/rev.jpg, width: " + width + "}\n"));
    }

    private static String taken(double pixels) {
        return String.format(java.util.Locale.ROOT, "%.1f mm", pixels / PIXELS);
    }

    private static Gauged shown(Outline outline) {
        return new Gauged.Measured(600, 600, KIND, OptionalDouble.empty(), found(outline), new ScaleBarRead.NotRead(ScaleBarRead.Reason.NONE));
    }

    private static Outlined found(Outline outline) {
        return new Outlined.Found(List.of(outline), 1, Background.of(1, 1, 1, 0));
    }

    /** As the reverse’s photograph shows the flan, its design upright; proved on a thing in space in TwoOutlinesTest. */
    private static Outline turnedOver(double axis) {
        return FLAN.moved(-300, -300).mirrored().turned(-axis).moved(300, 300);
    }

    private static Outline uneven() {
        return new Outline(new Ring(IntStream.range(0, 720).mapToObj(i -> {
            double turn = 2 * Math.PI * i / 720;
            double radius = 1 - 0.05 * Math.cos(2 * turn) + 0.02 * Math.sin(3 * turn) + 0.015 * Math.cos(5 * turn + 1);
            return new Point(radius * Math.sin(turn), -radius * Math.cos(turn));
        }).toList()), List.of());
    }
}
