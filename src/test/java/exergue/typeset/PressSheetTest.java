package exergue.typeset;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.finding.Findings;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** The file for the press, measured and read as a printer's checks would. */
class PressSheetTest {

    private static final float MILLIMETRE = 72 / 25.4f;

    private static byte[] book;
    private static byte[] press;
    private static Findings asked;

    @BeforeAll
    static void set() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        book = set(out);
        press = out.toByteArray();
    }

    private static byte[] set(ByteArrayOutputStream pressPdf) throws IOException {
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        try (SetBook set = Typesetter.set(SampleBook.of(12, 40), SampleBook.setting())) {
            set.write(Optional.of("Commit 1"), List.of(new Attachment("a.txt", "text/plain", "a", new byte[] {65})), pdf);
            asked = set.writeForPress(pressPdf);
        }
        return pdf.toByteArray();
    }

    @Test
    void everyPageHasTrimBleedAndRoomForMarks() throws IOException {
        try (PDDocument document = Loader.loadPDF(press)) {
            for (PDPage page : document.getPages()) {
                assertBox(0, 0, 210 + 20, 280 + 20, page.getMediaBox());
                assertBox(10, 10, 210, 280, page.getTrimBox());
                assertBox(7, 7, 216, 286, page.getBleedBox());
            }
        }
    }

    private static void assertBox(float left, float bottom, float width, float height, PDRectangle box) {
        assertEquals(left * MILLIMETRE, box.getLowerLeftX(), 0.1);
        assertEquals(bottom * MILLIMETRE, box.getLowerLeftY(), 0.1);
        assertEquals(width * MILLIMETRE, box.getWidth(), 0.1);
        assertEquals(height * MILLIMETRE, box.getHeight(), 0.1);
    }

    @Test
    void marksStandOutsideTheBleed() throws IOException {
        try (PDDocument document = Loader.loadPDF(press)) {
            String operators = operators(document.getPage(3));
            String marks = operators.substring(operators.indexOf("/ExergueRegistration CS"));
            List<float[]> lines = marks.lines().filter(line -> line.endsWith("l S")).map(PressSheetTest::line).toList();
            assertEquals(8, lines.size());
            PDRectangle bleed = document.getPage(3).getBleedBox();
            for (float[] line : lines) {
                boolean outside = Math.max(line[0], line[2]) <= bleed.getLowerLeftX() + 0.01
                        || Math.min(line[0], line[2]) >= bleed.getUpperRightX() - 0.01
                        || Math.max(line[1], line[3]) <= bleed.getLowerLeftY() + 0.01
                        || Math.min(line[1], line[3]) >= bleed.getUpperRightY() - 0.01;
                assertTrue(outside, () -> java.util.Arrays.toString(line));
            }
        }
    }

    private static float[] line(String operators) {
        String[] parts = operators.split(" ");
        return new float[] {Float.parseFloat(parts[0]), Float.parseFloat(parts[1]), Float.parseFloat(parts[3]),
            Float.parseFloat(parts[4])};
    }

    @Test
    void everyBlackIsBlackInkAlone() throws IOException {
        try (PDDocument set = Loader.loadPDF(book); PDDocument document = Loader.loadPDF(press)) {
            assertTrue(operators(set.getPage(6)).matches("(?s).*\\b0 0 0 rg\\b.*"), "the page engine writes black as RGB");
            for (PDPage page : document.getPages()) {
                assertFalse(operators(page).matches("(?s).*\\b([\\d.]+) \\1 \\1 (rg|RG)\\b.*"), "a grey in RGB");
            }
            assertTrue(operators(document.getPage(6)).matches("(?s).*\\b0 g\\b.*"));
        }
    }

    private static String operators(PDPage page) throws IOException {
        return new String(page.getContents().readAllBytes(), StandardCharsets.ISO_8859_1)
                .replaceAll("\\s*\\n", "\n").replaceAll("(?m)(?<=[\\d.])\\n(?=[\\d.]+ )", " ").replaceAll("(\\d)\\.0\\b", "$1");
    }

    @Test
    void whatOnlyAScreenUsesIsGoneAndTheTextIsTheSame() throws IOException {
        try (PDDocument set = Loader.loadPDF(book); PDDocument document = Loader.loadPDF(press)) {
            for (String key : List.of("Outlines", "StructTreeRoot", "Names", "AF")) {
                assertTrue(set.getDocumentCatalog().getCOSObject().containsKey(COSName.getPDFName(key)), key);
                assertFalse(document.getDocumentCatalog().getCOSObject().containsKey(COSName.getPDFName(key)), key);
            }
            for (PDPage page : document.getPages()) {
                assertEquals(List.of(), page.getAnnotations());
            }
            assertEquals(new PDFTextStripper().getText(set), new PDFTextStripper().getText(document));
        }
    }

    @Test
    void bothFilesKeepTheirStandards() throws Exception {
        assertEquals(List.of(), VeraPdf.failures(press, PDFAFlavour.PDFA_3_U));
        assertEquals(List.of(), VeraPdf.failures(book, PDFAFlavour.PDFA_3_U));
        assertEquals(List.of(), VeraPdf.failures(book, PDFAFlavour.PDFUA_1));
    }

    @Test
    void theSameBookGivesTheSameBytesAndTheBookIsThatOfARunWithoutPress() throws IOException {
        ByteArrayOutputStream again = new ByteArrayOutputStream();
        assertArrayEquals(book, set(again));
        assertArrayEquals(press, again.toByteArray());
        ByteArrayOutputStream alone = new ByteArrayOutputStream();
        Typesetter.typeset(SampleBook.of(12, 40), SampleBook.setting(), alone);
        ByteArrayOutputStream withPress = new ByteArrayOutputStream();
        try (SetBook set = Typesetter.set(SampleBook.of(12, 40), SampleBook.setting())) {
            set.write(Optional.empty(), List.of(), withPress);
            set.writeForPress(OutputStream.nullOutputStream());
        }
        assertArrayEquals(alone.toByteArray(), withPress.toByteArray());
    }

    @Test
    void thePrinterAsksAboutThePictures() {
        List<String> codes = asked.all().stream().map(finding -> finding.code().id()).distinct().sorted().toList();
        assertEquals(List.of("low-resolution", "rgb-pictures", "sheets-not-filled"), codes);
        assertTrue(asked.all().stream().anyMatch(f -> f.what().startsWith("“photographs/obv 3.jpg” has 120 pixels for ")),
                asked.all()::toString);
    }
}
