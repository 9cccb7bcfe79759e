package exergue.typeset;

import com.openhtmltopdf.newtable.TableBox;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.render.BlockBox;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.InlineLayoutBox;
import com.openhtmltopdf.render.InlineText;
import com.openhtmltopdf.render.LineBox;
import exergue.finding.Finding;
import exergue.finding.Place;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** Lines that came out wider than their column, and tables wider than the text. The engine says nothing of them, but its boxes show it. */
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
            if (child instanceof TableBox table && isProse(table)) {
                compare(table, id);
            }
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

    /** Other tables are the templates' own, which may hang out of their place on purpose. */
    private static boolean isProse(TableBox table) {
        return table.getElement() != null && table.getContainingBlock() != null
                && List.of(table.getElement().getAttribute("class").split(" ")).contains(ProseMarkup.TABLE);
    }

    /** A table is as wide as its longest words want, whatever the style sheet says. */
    private void compare(TableBox table, String id) {
        if (table.getWidth() > table.getContainingBlock().getContentWidth() + tolerance) {
            String which = table.getElement() == null ? "" : table.getElement().getAttribute("id");
            StringBuilder words = new StringBuilder();
            collect(table, words);
            findings.accept(Finding.of(TypesetCodes.TOO_WIDE, written.getOrDefault(which.isEmpty() ? id : which, otherwise), "",
                    "The table that begins with “" + shown(words) + "” is wider than the text and runs into the margin"
                            + (id.isEmpty() ? "." : " (in " + id + ")."),
                    "Shorten its words, put spaces where they may break, take a column away or make two tables of it."));
        }
    }

    private static String shown(StringBuilder words) {
        String all = words.toString().strip().replaceAll("\\s+", " ");
        return all.length() > MOST_SHOWN ? all.substring(0, MOST_SHOWN) + "…" : all;
    }

    private void compare(LineBox line, BlockBox block, String id) {
        int hanging = Math.max(0, -line.getX());
        if (line.getContentWidth() - hanging > block.getContentWidth() + tolerance) {
            StringBuilder words = new StringBuilder();
            collect(line, words);
            findings.accept(Finding.of(TypesetCodes.TOO_WIDE, written.getOrDefault(id, otherwise), "",
                    "“" + shown(words) + "” is wider than its column and runs into what stands beside it"
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
        if (box instanceof LineBox) {
            words.append(' ');
        }
    }
}
