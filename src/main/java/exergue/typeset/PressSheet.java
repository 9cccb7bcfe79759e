package exergue.typeset;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.color.PDColorSpace;

/**
 * The finished pages laid on larger sheets for the press: 3 mm of bleed around the trimmed page, crop marks outside
 * it, and black that prints with black ink alone. What only a screen can use is taken out: links, bookmarks, tags and
 * the data files; a printer's checks stumble over them.
 */
final class PressSheet {

    private static final float MILLIMETRE = 72 / 25.4f;
    private static final float BLEED = 3 * MILLIMETRE;
    private static final float MARK = 5 * MILLIMETRE;
    private static final float AROUND = 10 * MILLIMETRE;
    private static final COSName REGISTRATION = COSName.getPDFName("ExergueRegistration");

    private final PDDocument document;
    private final PureBlack black = new PureBlack();
    private final COSArray registration = registration();

    private PressSheet(PDDocument document) {
        this.document = document;
    }

    /** Changes the document for good; whatever else is to be written of it has been written before. */
    static void prepare(PDDocument document) throws IOException {
        PressSheet press = new PressSheet(document);
        for (PDPage page : document.getPages()) {
            press.lay(page);
        }
        COSDictionary catalogue = document.getDocumentCatalog().getCOSObject();
        for (String screen : new String[] {"Outlines", "StructTreeRoot", "MarkInfo", "Names", "Dests", "AF",
            "PageMode", "OpenAction"}) {
            catalogue.removeItem(COSName.getPDFName(screen));
        }
    }

    private void lay(PDPage page) throws IOException {
        PDRectangle trim = page.getMediaBox();
        float width = trim.getWidth();
        float height = trim.getHeight();
        byte[] content = black.contentOf(page);
        PDStream stream = new PDStream(document);
        try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
            out.write(ascii("q\n1 0 0 1 " + number(AROUND - trim.getLowerLeftX()) + " "
                    + number(AROUND - trim.getLowerLeftY()) + " cm\n"));
            out.write(content);
            out.write(ascii("\nQ\n" + marks(width, height)));
        }
        page.setContents(stream);
        page.getResources().put(REGISTRATION, PDColorSpace.create(registration));
        page.setMediaBox(new PDRectangle(width + 2 * AROUND, height + 2 * AROUND));
        page.setCropBox(page.getMediaBox());
        page.setTrimBox(new PDRectangle(AROUND, AROUND, width, height));
        page.setBleedBox(new PDRectangle(AROUND - BLEED, AROUND - BLEED, width + 2 * BLEED, height + 2 * BLEED));
        for (String screen : new String[] {"Annots", "StructParents", "Tabs"}) {
            page.getCOSObject().removeItem(COSName.getPDFName(screen));
        }
    }

    /** Two hairlines at each corner, in the trimmed edges' lines, from the bleed outwards; on all plates. */
    private static String marks(float width, float height) {
        StringBuilder marks = new StringBuilder("q\n/").append(REGISTRATION.getName()).append(" CS 1 SCN 0.25 w\n");
        for (float x : new float[] {AROUND, AROUND + width}) {
            line(marks, x, AROUND - BLEED, x, AROUND - BLEED - MARK);
            line(marks, x, AROUND + height + BLEED, x, AROUND + height + BLEED + MARK);
        }
        for (float y : new float[] {AROUND, AROUND + height}) {
            line(marks, AROUND - BLEED, y, AROUND - BLEED - MARK, y);
            line(marks, AROUND + width + BLEED, y, AROUND + width + BLEED + MARK, y);
        }
        return marks.append("Q\n").toString();
    }

    private static void line(StringBuilder marks, float fromX, float fromY, float toX, float toY) {
        marks.append(number(fromX)).append(' ').append(number(fromY)).append(" m ")
                .append(number(toX)).append(' ').append(number(toY)).append(" l S\n");
    }

    /** The colour that every plate prints; on a screen it is black. */
    private static COSArray registration() {
        COSDictionary tint = new COSDictionary();
        tint.setInt(COSName.FUNCTION_TYPE, 2);
        tint.setItem(COSName.DOMAIN, numbers(0, 1));
        tint.setItem(COSName.C0, numbers(1));
        tint.setItem(COSName.C1, numbers(0));
        tint.setItem(COSName.N, COSInteger.ONE);
        return new COSArray(Arrays.asList(COSName.SEPARATION, COSName.getPDFName("All"), COSName.DEVICEGRAY, tint));
    }

    private static COSArray numbers(float... values) {
        COSArray array = new COSArray();
        for (float value : values) {
            array.add(new COSFloat(value));
        }
        return array;
    }

    private static String number(float value) {
        return String.format(Locale.ROOT, "%.3f", value);
    }

    private static byte[] ascii(String operators) {
        return operators.getBytes(StandardCharsets.US_ASCII);
    }
}
