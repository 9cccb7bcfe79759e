package exergue.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.Enclosed;
import exergue.Exergue;
import exergue.Exergue.Checked;
import exergue.Exergue.Publication;
import exergue.Prints;
import exergue.Progress;
import exergue.TestDarkroom;
import exergue.files.FolderTree;
import exergue.typeset.Area;
import exergue.typeset.DrawnPages;
import exergue.typeset.Excerpt;
import exergue.typeset.Sheets;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A stretch of the demonstration book has the same lines in the same places as the whole book has there. */
class StretchTest {

    private static Checked checked;
    private static Publication publication;
    private static DrawnPages whole;

    @BeforeAll
    static void set() throws IOException {
        checked = TestDarkroom.checked(new FolderTree(Path.of("catalogue-src")));
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        publication = Exergue.typeset(checked, Enclosed.NOTHING, Prints.forScreen(pdf), Progress.SILENT).publication().orElseThrow();
        whole = DrawnPages.of(pdf.toByteArray());
    }

    @AfterAll
    static void close() throws IOException {
        whole.close();
    }

    @Test
    void everyEntryAndChapterIsSetAsInTheBook() throws IOException {
        List<String> other = new ArrayList<>();
        int pages = 0;
        for (Known entry : Known.all(publication.book(), checked.catalogue().orElseThrow())) {
            if (entry.entry().equals(entry.anchor())) {
                pages += compare(entry, other);
            }
        }
        assertEquals(List.of(), other);
        assertTrue(pages > 80, pages + " pages were compared");
    }

    private static int compare(Known entry, List<String> other) throws IOException {
        Excerpt excerpt = Stretch.around(entry.anchor(), publication.book(), publication.sheets()).orElseThrow();
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        Sheets sheets = Exergue.excerpt(checked, excerpt, pdf).orElseThrow();
        int blank = excerpt.blank();
        int last = sheets.areas().stream().filter(area -> area.anchor().equals(entry.anchor())).mapToInt(Area::page).max().orElseThrow();
        try (DrawnPages pages = DrawnPages.of(pdf.toByteArray())) {
            for (int page = blank; page <= last; page++) {
                int inBook = excerpt.firstPage() + page - blank;
                if (!pages.lines(page).equals(whole.lines(inBook)) || !sheets.folios().get(page).equals(publication.sheets().folios().get(inBook))) {
                    other.add(entry.id() + ", p. " + publication.sheets().folios().get(inBook));
                }
            }
        }
        return last + 1 - blank;
    }

    @Test
    void areasAreThoseOfTheWholeBook() throws IOException {
        Known entry = Known.all(publication.book(), checked.catalogue().orElseThrow()).stream()
                .filter(one -> one.anchor().startsWith("type.")).skip(20).findFirst().orElseThrow();
        Excerpt excerpt = Stretch.around(entry.anchor(), publication.book(), publication.sheets()).orElseThrow();
        Sheets sheets = Exergue.excerpt(checked, excerpt, new ByteArrayOutputStream()).orElseThrow();
        int moved = excerpt.firstPage() - excerpt.blank();
        assertEquals(of(publication.sheets(), entry.anchor(), 0), of(sheets, entry.anchor(), moved));
    }

    private static List<Area> of(Sheets sheets, String anchor, int moved) {
        return sheets.areas().stream().filter(area -> area.anchor().equals(anchor)).map(area ->
                new Area(anchor, area.page() + moved, area.left(), area.top(), area.right(), area.bottom())).toList();
    }
}
