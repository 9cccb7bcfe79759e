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
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * On which page each mark came to stand, read from the boxes once they are laid out.
 *
 * @param count  of pages, blank ones included
 * @param front  pages before the first page of the body
 * @param blank  pages with nothing on them, from 0
 * @param pageOf each mark's page, from 0, in the order of the book
 * @param before pages of the book before the first of these, of which only an excerpt has any
 * @param amid   whether the first of these goes on with a part that was opened before
 */
record SetPages(int count, int front, Set<Integer> blank, Map<Mark, Integer> pageOf, int before, boolean amid) {

    /** Of a whole book. */
    SetPages(int count, int front, Set<Integer> blank, Map<Mark, Integer> pageOf) {
        this(count, front, blank, pageOf, 0, false);
    }

    /** @param blanks what has a blank page before it */
    static SetPages read(PdfBoxRenderer laidOut, Marks marks, int front, Blanks blanks) {
        Map<Mark, Integer> pageOf = pageOf(laidOut, marks);
        return new SetPages(pages(laidOut).size(), front, blanks.pages(front, pageOf), pageOf);
    }

    static SetPages read(PdfBoxRenderer laidOut, Marks marks, Excerpt excerpt) {
        Set<Integer> blank = IntStream.range(0, excerpt.blank()).boxed().collect(Collectors.toCollection(TreeSet::new));
        return new SetPages(pages(laidOut).size(), excerpt.front(), blank, pageOf(laidOut, marks),
                excerpt.firstPage() - blank.size(), excerpt.isAmid());
    }

    private static List<PageBox> pages(PdfBoxRenderer laidOut) {
        return laidOut.getRootBox().getLayer().getPages();
    }

    private static Map<Mark, Integer> pageOf(PdfBoxRenderer laidOut, Marks marks) {
        List<Integer> tops = pages(laidOut).stream().map(PageBox::getTop).toList();
        Map<Mark, Integer> pageOf = new LinkedHashMap<>();
        for (Mark mark : marks.all()) {
            Box box = laidOut.getSharedContext().getBoxById(mark.id());
            if (box != null) {
                pageOf.put(mark, pageAt(tops, firstLine(box).getAbsY()));
            }
        }
        return pageOf;
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

    /** @param tops of all pages, in the engine's dots down the whole book */
    static int pageAt(List<Integer> tops, int y) {
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
        int inBook = page + before;
        return inBook < front ? Roman.of(inBook + 1) : String.valueOf(inBook - front + 1);
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
