package exergue.typeset;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.render.BlockBox;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.InlineLayoutBox;
import com.openhtmltopdf.render.InlineText;
import com.openhtmltopdf.render.LineBox;
import exergue.finding.Finding;
import exergue.finding.Place;
import java.util.Map;
import java.util.function.Consumer;

/** Lines that came out wider than their column. The engine says nothing of them, but its boxes show it. */
final class TooWide {

    private static final int MOST_SHOWN = 60;

    private final Map<String, Place> written;
    private final Place otherwise;
    private final Consumer<Finding> findings;
    private final int tolerance;

    /**
     * @param written   where the coin or type of an id is written
     * @param otherwise where to look if the id is of neither
     */
    TooWide(PdfBoxRenderer laidOut, Map<String, Place> written, Place otherwise, Consumer<Finding> findings) {
        this.written = written;
        this.otherwise = otherwise;
        this.findings = findings;
        this.tolerance = Math.round(laidOut.getDotsPerPoint());
    }

    void look(Box box, String idAbove) {
        String id = box.getElement() == null || box.getElement().getAttribute("id").isEmpty()
                ? idAbove : box.getElement().getAttribute("id");
        for (int i = 0; i < box.getChildCount(); i++) {
            Box child = box.getChild(i);
            if (child instanceof LineBox line && box instanceof BlockBox block && !isAlone(block)) {
                compare(line, block, id);
            }
            look(child, id);
        }
    }

    /** A box in a line takes its width from its words; if they are too wide, the line around it shows it. */
    private static boolean isAlone(BlockBox block) {
        return block.getStyle().isInlineBlock();
    }

    private void compare(LineBox line, BlockBox block, String id) {
        int hanging = Math.max(0, -line.getX());
        if (line.getContentWidth() - hanging > block.getContentWidth() + tolerance) {
            StringBuilder words = new StringBuilder();
            collect(line, words);
            String shown = words.length() > MOST_SHOWN ? words.substring(0, MOST_SHOWN) + "…" : words.toString();
            findings.accept(Finding.of(TypesetCodes.TOO_WIDE, written.getOrDefault(id, otherwise), "",
                    "“" + shown.strip() + "” is wider than its column and runs into what stands beside it"
                            + (id.isEmpty() ? "." : " (in " + id + ")."),
                    "Shorten it, put a space where the line may break, or give its column more room in page.css."));
        }
    }

    private static void collect(Box box, StringBuilder words) {
        if (box instanceof InlineLayoutBox inline) {
            for (int i = 0; i < inline.getInlineChildCount(); i++) {
                Object child = inline.getInlineChild(i);
                if (child instanceof InlineText text) {
                    words.append(text.getSubstring());
                } else if (child instanceof Box nested) {
                    collect(nested, words);
                }
            }
            return;
        }
        for (int i = 0; i < box.getChildCount(); i++) {
            collect(box.getChild(i), words);
        }
    }
}
