package exergue.typeset;

import com.openhtmltopdf.css.style.CalculatedStyle;
import com.openhtmltopdf.layout.LayoutContext;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.LineBox;
import com.openhtmltopdf.render.PageBox;
import exergue.edition.Anchors;
import exergue.typeset.Marks.Kind;
import exergue.typeset.Marks.Mark;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Where everything that has a mark stands, read from the boxes once they are laid out. */
final class AreaFinder {

    private static final int WHOLE = 10_000;

    /** Upper and lower edge of lines on one page, in the engine's dots down the whole book. */
    private record Lines(int top, int bottom) {

        Lines and(Lines other) {
            return new Lines(Math.min(top, other.top), Math.max(bottom, other.bottom));
        }
    }

    private final PdfBoxRenderer laidOut;
    private final LayoutContext context;
    private final List<PageBox> pages;
    private final List<Integer> tops;
    private final List<Area> found = new ArrayList<>();

    private AreaFinder(PdfBoxRenderer laidOut) {
        this.laidOut = laidOut;
        this.context = laidOut.getSharedContext().newLayoutContextInstance();
        this.pages = laidOut.getRootBox().getLayer().getPages();
        this.tops = pages.stream().map(PageBox::getTop).toList();
    }

    /** In the order of the marks; those of a coin on a plate after that in the text. */
    static List<Area> find(PdfBoxRenderer laidOut, Marks marks) {
        AreaFinder finder = new AreaFinder(laidOut);
        for (Mark mark : marks.all()) {
            finder.look(mark.id(), mark.id());
            if (mark.kind() == Kind.COIN) {
                finder.look(mark.id(), Anchors.onPlate(mark.id()));
            }
        }
        return List.copyOf(finder.found);
    }

    private void look(String anchor, String element) {
        Box box = laidOut.getSharedContext().getBoxById(element);
        if (box == null) {
            return;
        }
        Map<Integer, Lines> byPage = new TreeMap<>();
        collect(box, byPage);
        boolean onPlate = !anchor.equals(element);
        byPage.forEach((number, lines) -> found.add(area(anchor, number, lines, onPlate ? box : laidOut.getRootBox())));
    }

    /** Lines know where they came to stand; a box that was moved to the next page may still say where it was first put. */
    private void collect(Box box, Map<Integer, Lines> byPage) {
        if (box instanceof LineBox) {
            byPage.merge(SetPages.pageAt(tops, box.getAbsY()), new Lines(box.getAbsY(), box.getAbsY() + box.getHeight()), Lines::and);
            return;
        }
        for (int i = 0; i < box.getChildCount(); i++) {
            collect(box.getChild(i), byPage);
        }
    }

    /** @param across what it is as wide as */
    private Area area(String anchor, int number, Lines lines, Box across) {
        PageBox page = pages.get(number);
        int width = page.getWidth(context);
        int height = page.getHeight(context);
        int left = page.getMarginBorderPadding(context, CalculatedStyle.LEFT) + across.getAbsX();
        int down = page.getMarginBorderPadding(context, CalculatedStyle.TOP) - page.getTop();
        return new Area(anchor, number, share(left, width), share(lines.top() + down, height),
                share(left + across.getWidth(), width), share(lines.bottom() + down, height));
    }

    private static int share(int dots, int of) {
        return Math.max(0, Math.min(WHOLE, (int) Math.round((double) dots * WHOLE / of)));
    }
}
