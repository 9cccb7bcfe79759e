package exergue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.edition.Book;
import exergue.edition.EntryBlock;
import exergue.edition.Part;
import exergue.files.MemoryTree;
import exergue.finding.Finding;
import exergue.model.Inline;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Dates and legends on their road from an entry to the book. */
class DatesAndLegendsTest {

    private static Map<String, String> files() {
        Map<String, String> files = new TreeMap<>();
        files.put("catalogue.yaml", "title: Coins\nlanguage: en\nparts: {body: [catalogue]}\n");
        files.put("house-style.yaml", "eras:\n  ardian: {sign: year, year-one: -0311}\n");
        files.put("conventions.yaml", "bench: {title: at the bench}\n");
        files.put("mints.yaml", "lampron: {name: Lampron}\n");
        files.put("rulers.yaml", "archon: {name: Archon, dates: -0299~/-0269~}\n");
        files.put("types/owl.yaml", "id: owl\nmint: lampron\nruler: archon\ndenomination: Drachm\nmetal: silver\ndate: -0279/-0269\n"
                + "era-date: {era: ardian, year: 35}\nobverse: {legend: 'ΛΑΜ[[ΠΡ<Ο>]]Ν', retrograde: yes, description: Owl.}\n"
                + "reverse: {description: Branch.}\n");
        files.put("coins/lk-1.yaml", "id: lk-1\ntype: owl\nmeasured: {by: bench, weight: 3.87 g}\nera-date: {era: ardian, year: 36}\n"
                + "obverse: {legend: 'ΛΑΜ[---]'}\nreverse: {retrograde: yes}\n");
        return files;
    }

    private static List<EntryBlock> blocks(Map<String, String> files) throws IOException {
        Book book = Exergue.check(MemoryTree.ofText(files), Progress.SILENT).book().orElseThrow();
        return ((Part.Entries) book.body().get(0)).blocks();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "en | '' | c. 300–270 BC | 280–270 BC | year 35 (278/7 BC) | Retrograde.",
        "en | dates: {era-words: BCE/CE, circa: ca.} | ca. 300–270 BCE | 280–270 BCE | year 35 (278/7 BCE) | Retrograde.",
        "fr | '' | vers 300–270 av. J.-C. | 280–270 av. J.-C. | year 35 (278/7 av. J.-C.) | Rétrograde.",
        "de | '' | ca. 300–270 v. Chr. | 280–270 v. Chr. | year 35 (278/7 v. Chr.) | Rückläufig.",
        "it | '' | ca. 300–270 a.C. | 280–270 a.C. | year 35 (278/7 a.C.) | Retrograda."})
    void datesAreInTheWordsOfTheBook(String language, String style, String reign, String date, String year, String way) throws IOException {
        Map<String, String> files = files();
        files.computeIfPresent("catalogue.yaml", (path, text) -> text.replace("language: en", "language: " + language));
        files.merge("house-style.yaml", style + "\n", String::concat);
        List<EntryBlock> blocks = blocks(files);
        assertEquals(reign, ((EntryBlock.RulerHeading) blocks.get(1)).dates().orElseThrow());
        EntryBlock.Entry entry = (EntryBlock.Entry) blocks.get(2);
        assertEquals(List.of(date, year), entry.firstLine().subList(2, 4));
        assertTrue(Inline.plain(entry.sides().get(0).description()).startsWith(way + " Owl"));
    }

    @Test
    void legendsAreInTheSignsOfTheLeidenSystem() throws IOException {
        EntryBlock.Entry entry = (EntryBlock.Entry) blocks(files()).get(2);
        assertEquals("ΛΑΜ⟦ΠΡ⟨Ο⟩⟧Ν", entry.sides().get(0).legend().orElseThrow());
        String remarks = Inline.plain(entry.specimens().get(0).remarks());
        assertTrue(remarks.contains("Obv. legend ΛΑΜ[– – –]. Rev. legend retrograde. Year 36 (277/6 BC)."), remarks);
    }

    @Test
    void aDateInWordsHasTheEditThatMendsIt() throws IOException {
        Map<String, String> files = files();
        files.computeIfPresent("types/owl.yaml", (path, text) -> text.replace("-0279/-0269", "\"280–270 BC\""));
        Finding finding = Exergue.check(MemoryTree.ofText(files), Progress.SILENT).findings().all().stream()
                .filter(f -> f.code().id().equals("date-not-edtf")).findFirst().orElseThrow();
        assertEquals("types/owl.yaml:6:7 12 -0279/-0269", finding.place() + " " + finding.place().length() + " "
                + finding.edit().orElseThrow().text());
    }
}
