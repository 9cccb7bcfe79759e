package exergue.typeset;

import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Every run of words of a PDF with its place: page, left and baseline in points from the top, size and face. */
final class PlacedLines extends PDFTextStripper {

    private final StringBuilder dump = new StringBuilder();

    static String of(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PlacedLines lines = new PlacedLines();
            lines.writeText(document, new StringWriter());
            return lines.dump.toString();
        }
    }

    @Override
    protected void startPage(org.apache.pdfbox.pdmodel.PDPage page) {
        dump.append("page ").append(getCurrentPageNo()).append('\n');
    }

    @Override
    protected void writeString(String text, List<TextPosition> positions) {
        TextPosition first = positions.get(0);
        String face = first.getFont().getName().replaceAll("^[A-Z]{6}\\+(GentiumBookPlus-?)?", "");
        dump.append(String.format(Locale.ROOT, "%6.1f %6.1f %4.1f %s  %s%n", first.getXDirAdj(), first.getYDirAdj(),
                first.getFontSizeInPt(), face.isEmpty() ? "Regular" : face, text.strip()));
    }
}
