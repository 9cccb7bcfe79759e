package exergue.typeset;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.LineBox;
import com.openhtmltopdf.render.PageBox;
import exergue.edition.PageMap;
import exergue.edition.Roman;
import exergue.typeset.Marks.Mark;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * On which page each mark came to stand, read from the boxes once they are laid out.
 *
 * @param count  of pages, blank ones included
 * @param front  pages before the first page of the body
 * @param blank  pages with nothing on them, from 0
 * @param pageOf each mark's page, from 0, in the order of the book
 */
record SetPages(int count, int front, Set<Integer> blank, Map<Mark, Integer> pageOf) {

    /** @param blanks what has a blank page before it */
    static SetPages read(PdfBoxRenderer laidOut, Marks marks, int front, Blanks blanks) {
        List<PageBox> pages = laidOut.getRootBox().getLayer().getPages();
        List<Integer> tops = pages.stream().map(PageBox::getTop).toList();
        Map<Mark, Integer> pageOf = new LinkedHashMap<>();
        for (Mark mark : marks.all()) {
            Box box = laidOut.getSharedContext().getBoxById(mark.id());
            if (box != null) {
                pageOf.put(mark, pageAt(tops, firstLine(box).getAbsY()));
            }
        }
        return new SetPages(pages.size(), front, blanks.pages(front, pageOf), pageOf);
    }

    /** A box that was moved to the next page may still say where it was first put; its lines do not. */
    private static Box firstLine(Box box) {
        if (box instanceof LineBox) {
            return box;
        }
        for (int i = 0; i < box.getChildCount(); i++) {
            Box line = firstLine(box.getChild(i));
            if (line instanceof LineBox) {
                return line;
            }
        }
        return box;
    }

    private static int pageAt(List<Integer> tops, int y) {
        int low = 0;
        int high = tops.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (tops.get(middle) <= y) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    /** Roman before the body, then from 1. */
    String folio(int page) {
        return page < front ? Roman.of(page + 1) : String.valueOf(page - front + 1);
    }

    PageMap map() {
        Map<String, String> folios = new LinkedHashMap<>();
        pageOf.forEach((mark, page) -> folios.putIfAbsent(mark.id(), folio(page)));
        return new PageMap(folios, count);
    }

    /** The marks of each page. */
    List<List<Mark>> byPage() {
        List<List<Mark>> byPage = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            byPage.add(new ArrayList<>());
        }
        pageOf.forEach((mark, page) -> byPage.get(page).add(mark));
        return byPage;
    }
}
