package exergue.typeset;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.PageBox;
import exergue.typeset.ColumnBreaks.Row;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Shares the lines of concordances and indexes out over columns and pages. The engine does not balance columns, so the
 * lists are laid out once as a galley, one column wide, and measured there; the style sheet alone says how wide a column
 * is, and with that how many stand side by side.
 */
final class Galley {

    /** A list does not begin at the foot of a page with less than this many lines in each column. */
    private static final int FEWEST_ROWS = 6;

    private final PdfBoxRenderer laidOut;
    private int left;
    private int pageHeight;

    private Galley(PdfBoxRenderer laidOut) {
        this.laidOut = laidOut;
    }

    /** Gives every such part its {@code runs}: what stands together on one page. @param parts as they were laid out */
    static void share(PdfBoxRenderer laidOut, List<Map<String, Object>> parts) {
        Galley galley = new Galley(laidOut);
        parts.forEach(part -> part.put("runs", galley.runs(part)));
    }

    private List<Map<String, Object>> runs(Map<String, Object> part) {
        List<Map<String, Object>> runs = new ArrayList<>();
        List<?> listings = (List<?>) part.get("listings");
        PageBox page = pageOf(box(part.get("anchor").toString()));
        pageHeight = page.getBottom() - page.getTop() - Math.round(laidOut.getDotsPerPoint());
        left = pageHeight - (box(anchor((Map<?, ?>) listings.get(0), "")).getAbsY() - page.getTop());
        for (Object listing : listings) {
            listing((Map<?, ?>) listing, runs);
        }
        return runs;
    }

    private void listing(Map<?, ?> listing, List<Map<String, Object>> runs) {
        int heading = box(anchor(listing, "")).getHeight();
        int heads = listing.containsKey("left") ? box(anchor(listing, "-heads")).getHeight() : 0;
        int runsOn = box(anchor(listing, "-on")).getHeight();
        List<Row> rows = rows(listing);
        ColumnBreaks breaks = new ColumnBreaks(rows, number(box(anchor(listing, "-columns")), box(anchor(listing, "-column"))));
        int room = left - heading - heads;
        boolean top = false;
        if (!breaks.takesAll(0, Math.max(1, room)) && room < FEWEST_ROWS * rows.get(0).height()) {
            top = true;
            room = pageHeight - heading - heads;
        }
        int at = 0;
        while (at < rows.size()) {
            boolean last = breaks.takesAll(at, room);
            List<Integer> starts = last ? breaks.balanced(at, room) : breaks.filled(at, room);
            runs.add(run(listing, starts, at == 0, top));
            at = starts.get(starts.size() - 1);
            left = room - breaks.height(starts);
            top = true;
            room = pageHeight - heads - runsOn;
        }
    }

    private static Map<String, Object> run(Map<?, ?> listing, List<Integer> starts, boolean opens, boolean top) {
        List<?> lines = (List<?>) listing.get("lines");
        List<Object> columns = new ArrayList<>();
        for (int i = 0; i + 1 < starts.size(); i++) {
            columns.add(lines.subList(starts.get(i), starts.get(i + 1)));
        }
        Map<String, Object> run = new LinkedHashMap<>();
        run.put("listing", listing);
        run.put("opens", opens);
        run.put("top", top);
        run.put("columns", columns);
        return run;
    }

    /** As many as fit side by side; a column's width has the room between two in it. */
    private static int number(Box columns, Box column) {
        return Math.max(1, columns.getWidth() / Math.max(1, column.getWidth()));
    }

    private List<Row> rows(Map<?, ?> listing) {
        List<?> lines = (List<?>) listing.get("lines");
        List<Box> boxes = new ArrayList<>();
        int gap = 0;
        for (int i = 0; i < lines.size(); i++) {
            boxes.add(box(anchor(listing, "-" + i)));
            boolean opens = i > 0 && Boolean.TRUE.equals(((Map<?, ?>) lines.get(i)).get("gap"));
            if (opens && pageOf(boxes.get(i)) == pageOf(boxes.get(i - 1))) {
                gap = boxes.get(i).getAbsY() - boxes.get(i - 1).getAbsY() - boxes.get(i - 1).getHeight();
            }
        }
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            boolean opens = Boolean.TRUE.equals(((Map<?, ?>) lines.get(i)).get("gap"));
            rows.add(new Row(boxes.get(i).getHeight(), opens ? Math.max(0, gap) : 0));
        }
        return rows;
    }

    private PageBox pageOf(Box box) {
        List<PageBox> pages = laidOut.getRootBox().getLayer().getPages();
        PageBox found = pages.get(0);
        for (PageBox page : pages) {
            if (page.getTop() <= box.getAbsY()) {
                found = page;
            }
        }
        return found;
    }

    private Box box(String id) {
        return laidOut.getSharedContext().getBoxById(id);
    }

    private static String anchor(Map<?, ?> listing, String what) {
        return listing.get("anchor") + what;
    }
}
