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
import exergue.model.TemplateChoice;
import java.io.OutputStream;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TooWideTest {

    private static final Place COIN = new Place("coins/lk-1.yaml", 1, 1, 0);

    private static List<String> found(String dies, String whereabouts) throws Exception {
        Specimen coin = new Specimen("lk-1", "1", List.of(), "", dies, whereabouts, List.of(), List.of(), Optional.empty(),
                "", Alone.NOTHING);
        Book book = new Book("en", SampleBook.title(), List.of(), List.of(new Part.Entries("catalogue",
                SampleBook.words("Catalogue"), List.of(new Entry("type.a", "1", List.of("Drachm"), List.of(), List.of(),
                List.of(coin), List.of(), "Lykaia", "")))), List.of());
        Setting setting = new Setting(MemoryTree.ofText(Map.of()), TemplateChoice.USUAL, Rows.ALIGNED,
                Map.of("lk-1", COIN), () -> new Stamp("0".repeat(32)), Progress.SILENT);
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

    @Test
    void whatFitsIsNone() throws Exception {
        assertEquals(List.of(), found("O123/R456", "Thornbury ".repeat(30)));
    }
}
