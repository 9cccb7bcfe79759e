package exergue.proof;

import exergue.typeset.Area;
import exergue.typeset.DrawnPages;
import exergue.typeset.Sheets;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The pages of one setting of the book, or of a stretch of it, as they can be looked at. */
final class PageSet implements AutoCloseable {

    private final int id;
    private final DrawnPages pages;
    private final Sheets sheets;
    private final int count;
    private final List<Integer> sheet;
    private final Map<Integer, List<DrawnPages.Line>> lines = new ConcurrentHashMap<>();

    /** @throws IOException if the bytes are no PDF */
    PageSet(int id, byte[] pdf, Sheets sheets) throws IOException {
        this.id = id;
        this.pages = DrawnPages.of(pdf);
        this.count = pages.count();
        this.sheet = pages.sheet();
        this.sheets = sheets;
    }

    int id() {
        return id;
    }

    /** Width and height of its first page, in points. */
    List<Integer> sheet() {
        return sheet;
    }

    int count() {
        return count;
    }

    Sheets sheets() {
        return sheets;
    }

    /** Pages from and to, the second not included. @param fresh if they are no whole book */
    List<Leaf> leaves(int from, int to, boolean fresh) {
        Map<Integer, List<Area>> areas = sheets.areas().stream()
                .collect(Collectors.groupingBy(Area::page, TreeMap::new, Collectors.toList()));
        return IntStream.range(from, to).mapToObj(page -> new Leaf(id, page, sheets.folios().get(page), fresh,
                areas.getOrDefault(page, List.of()))).toList();
    }

    byte[] png(int page, int dpi) throws IOException {
        return pages.png(page, dpi);
    }

    List<DrawnPages.Line> lines(int page) throws IOException {
        List<DrawnPages.Line> read = lines.get(page);
        if (read == null) {
            read = new ArrayList<>(pages.lines(page));
            lines.put(page, read);
        }
        return read;
    }

    @Override
    public void close() throws IOException {
        pages.close();
    }
}
