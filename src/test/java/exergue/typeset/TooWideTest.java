package exergue.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.edition.Alone;
import exergue.edition.Book;
import exergue.edition.EntryBlock.Entry;
import exergue.edition.Part;
import exergue.edition.Specimen;
import exergue.files.MemoryTree;
import exergue.finding.Place;
import exergue.model.HouseStyle.Rows;
import exergue.model.Inline;
import exergue.model.Prose;
import exergue.model.TemplateChoice;
import java.io.OutputStream;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TooWideTest {

    private static final Place COIN = new Place("coins/lk-1.yaml", 1, 1, 0);

    private static List<String> found(String dies, String whereabouts) throws Exception {
        Specimen coin = new Specimen("lk-1", "1", List.of(), "", dies, whereabouts, List.of(), List.of(), Optional.empty(),
                "", Alone.NOTHING);
        Book book = new Book("en", SampleBook.title(), List.of(), List.of(new Part.Entries("catalogue",
                SampleBook.words("Catalogue"), List.of(new Entry("type.a", "1", List.of("Drachm"), List.of(), List.of(),
                List.of(coin), List.of(), "Lykaia", "")))), List.of());
        Setting setting = new Setting(MemoryTree.ofText(Map.of()), TemplateChoice.USUAL, Rows.ALIGNED,
                Map.of("lk-1", COIN), () -> new Stamp("0".repeat(32)), pages -> { }, Progress.SILENT);
        return Typesetter.typeset(book, setting, OutputStream.nullOutputStream()).findings().all().stream()
                .map(f -> f.place() + " " + f.code().id() + " " + f.what()).toList();
    }

    @Test
    void aPairOfDiesWiderThanItsColumnIsAFinding() throws Exception {
        assertEquals(List.of("coins/lk-1.yaml:1:1 too-wide “O123456789/R123456789” is wider than its column and runs "
                + "into what stands beside it (in lk-1)."), found("O123456789/R123456789", "Thornbury"));
    }

    @Test
    void aWordWiderThanTheRemarksIsAFinding() throws Exception {
        assertEquals(1, found("O1/R1", "x".repeat(90)).size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"O1/R1", "O123/R456", "O1000/R4996", "O1000bis/R4996"})
    void whatFitsIsNone(String dies) throws Exception {
        assertEquals(List.of(), found(dies, "Thornbury ".repeat(30)));
    }

    private static List<String> foundInTable(int columns, String cell) throws Exception {
        List<List<Inline>> row = Collections.nCopies(columns, SampleBook.words(cell));
        Prose table = new Prose.Table(Collections.nCopies(columns, "left"), row, List.of(row), SampleBook.PLACE);
        Book book = new Book("en", SampleBook.title(), List.of(), List.of(new Part.Text("finds", SampleBook.words("Finds"), List.of(table))), List.of());
        return Typesetter.typeset(book, SampleBook.setting(), OutputStream.nullOutputStream()).findings().all().stream()
                .map(f -> f.code().id() + " " + f.what()).toList();
    }

    @Test
    void aTableWiderThanTheTextIsAFinding() throws Exception {
        assertEquals(List.of(), foundInTable(6, "Tetradrachms of the kings"));
        assertEquals(List.of("too-wide The table that begins with “Tetradrachms Tetradrachms Tetradrachms Tetradrachms Tetradra…” is wider "
                + "than the text and runs into the margin (in finds)."), foundInTable(12, "Tetradrachms"));
    }
}
