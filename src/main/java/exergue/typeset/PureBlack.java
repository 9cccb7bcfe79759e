package exergue.typeset;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdfwriter.ContentStreamWriter;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;

/**
 * Black and grey as the black plate prints them. The page engine writes black as red, green and blue of nothing, which
 * a press may build of four inks, and small type out of register; the same as a grey is black ink alone.
 */
final class PureBlack {

    private static final int PARTS = 3;

    private final Set<COSStream> done = Collections.newSetFromMap(new IdentityHashMap<>());

    /** The page's operators with every grey as a grey; drawings on the page are changed where they are. */
    byte[] contentOf(PDPage page) throws IOException {
        changeDrawings(page.getResources());
        ByteArrayOutputStream content = new ByteArrayOutputStream();
        new ContentStreamWriter(content).writeTokens(greyed(new PDFStreamParser(page).parse()));
        return content.toByteArray();
    }

    private void changeDrawings(PDResources resources) throws IOException {
        if (resources == null) {
            return;
        }
        for (COSName name : resources.getXObjectNames()) {
            if (!resources.isImageXObject(name)) {
                PDXObject drawing = resources.getXObject(name);
                if (drawing instanceof PDFormXObject form && done.add(form.getCOSObject())) {
                    List<Object> tokens = greyed(new PDFStreamParser(form).parse());
                    try (OutputStream out = form.getStream().createOutputStream(COSName.FLATE_DECODE)) {
                        new ContentStreamWriter(out).writeTokens(tokens);
                    }
                    changeDrawings(form.getResources());
                }
            }
        }
    }

    private static List<Object> greyed(List<Object> tokens) {
        List<Object> greyed = new ArrayList<>(tokens.size());
        for (Object token : tokens) {
            String grey = token instanceof Operator operator ? greyOf(operator.getName()) : "";
            int at = greyed.size() - PARTS;
            if (!grey.isEmpty() && at >= 0 && isGrey(greyed.subList(at, greyed.size()))) {
                greyed.subList(at + 1, greyed.size()).clear();
                greyed.add(Operator.getOperator(grey));
            } else {
                greyed.add(token);
            }
        }
        return greyed;
    }

    private static String greyOf(String operator) {
        return switch (operator) {
            case "rg" -> "g";
            case "RG" -> "G";
            default -> "";
        };
    }

    private static boolean isGrey(List<Object> colour) {
        return colour.stream().allMatch(COSNumber.class::isInstance)
                && colour.stream().map(part -> ((COSNumber) part).floatValue()).distinct().count() == 1;
    }
}
