package exergue.typeset;

import exergue.typeset.DrawnPages.Line;
import java.io.IOException;
import java.util.List;
import java.util.function.Consumer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** What is written on a page of a PDF, piece by piece, and where. */
final class PageLines extends PDFTextStripper {

    private static final int WHOLE = 10_000;

    private final PDRectangle sheet;
    private final Consumer<Line> found;

    private PageLines(PDRectangle sheet, Consumer<Line> found) {
        this.sheet = sheet;
        this.found = found;
    }

    /** @param page from 0 */
    static void read(PDDocument document, int page, Consumer<Line> found) throws IOException {
        PageLines lines = new PageLines(document.getPage(page).getCropBox(), found);
        lines.setStartPage(page + 1);
        lines.setEndPage(page + 1);
        lines.getText(document);
    }

    @Override
    protected void writeString(String text, List<TextPosition> letters) {
        if (text.isBlank() || letters.isEmpty()) {
            return;
        }
        TextPosition first = letters.get(0);
        TextPosition last = letters.get(letters.size() - 1);
        float height = 0;
        for (TextPosition letter : letters) {
            height = Math.max(height, letter.getFontSizeInPt());
        }
        float foot = first.getYDirAdj() + height / 4;
        found.accept(new Line(text, share(first.getXDirAdj(), sheet.getWidth()), share(foot - height, sheet.getHeight()),
                share(last.getXDirAdj() + last.getWidthDirAdj(), sheet.getWidth()), share(foot, sheet.getHeight())));
    }

    private static int share(float points, float of) {
        return Math.max(0, Math.min(WHOLE, Math.round(points * WHOLE / of)));
    }
}
