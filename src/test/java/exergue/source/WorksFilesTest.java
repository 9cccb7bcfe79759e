package exergue.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.files.MemoryTree;
import exergue.model.Reference;
import exergue.model.Work;
import exergue.model.WorkItem;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** works.json, works.bib and works.yaml, joined. */
class WorksFilesTest {

    private static Loaded read(Map<String, String> more) {
        Map<String, String> files = Trees.sound();
        files.putAll(more);
        return Trees.read(MemoryTree.ofText(files));
    }

    private static Work only(Map<String, String> more) {
        Loaded loaded = read(more);
        assertEquals("", Trees.shown(loaded.findings()));
        return loaded.catalogue().orElseThrow().works().values().iterator().next();
    }

    @Test
    void theSignOfWorksYamlComesFirst() {
        Work work = only(Map.of("works.bib", "@book{Hallam1931, shorthand = {H}, shorttitle = {Coast}, title = {Coins of the Coast}}",
                "works.yaml", "Hallam1931: {sign: Hallam, standard: yes}\n"));
        assertEquals("Hallam works.yaml:1:20", work.sign() + " " + work.sign().place());
        assertTrue(work.standard());
    }

    @ParameterizedTest
    @CsvSource({"'\"shortTitle\": \"A\", \"title-short\": \"B\", \"citation-label\": \"C\"', A",
            "'\"title-short\": \"B\", \"citation-label\": \"C\"', B", "'\"citation-label\": \"C\"', C"})
    void theSignOfJson(String written, String sign) {
        assertEquals(sign, only(Map.of("works.json", "[{\"id\": 1, \"title\": \"Coins\", " + written + "}]")).sign().value());
    }

    @Test
    void theSignOfBibtexIsItsShorthandBeforeItsShortTitle() {
        assertEquals("H", only(Map.of("works.bib", "@book{h, shorttitle = {Coast}, shorthand = {H}, title = {Coins}}")).sign().value());
        assertEquals("Coast", only(Map.of("works.bib", "@book{h, shorttitle = {Coast}, title = {Coins}}")).sign().value());
    }

    @Test
    void everyValueKnowsItsPlace() {
        Work bib = only(Map.of("works.bib", "@book{h,\n  shorthand = {H},\n  title = {Coins}}"));
        assertEquals("works.bib:1:7 works.bib:2:15 works.bib:3:11", bib.id().place() + " " + bib.sign().place() + " " + title(bib));
        Work json = only(Map.of("works.json", "[{\"id\": \"h\", \"title-short\": \"H\",\n  \"title\": \"Coins\"}]"));
        assertEquals("works.json:1:9 works.json:1:29 works.json:2:12", json.id().place() + " " + json.sign().place() + " " + title(json));
    }

    private static String title(Work work) {
        WorkItem item = ((Work.Item) work.description()).item();
        return item.texts().get("title").place().toString();
    }

    /** Accents of Lamport, LaTeX (1994), table 3.1, and letters of table 3.2; from memory. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '!', value = {"\\`{o} | ò", "\\'{o} | ó", "\\^{o} | ô", "\\\"{o} | ö", "\\~{o} | õ",
            "\\={o} | ō", "\\.{o} | ȯ", "\\u{o} | ŏ", "\\v{o} | ǒ", "\\H{o} | ő", "\\c{c} | ç", "\\d{o} | ọ", "\\b{b} | ḇ",
            "{\\\"o}x | öx", "\\\"ox | öx", "{\\'\\i} | í", "\\v c | č", "{\\ss}x | ßx", "\\oe uvre | œuvre",
            "\\O{}rsted | Ørsted", "\\AA | Å", "10--12 | 10–12", "a~b | a\u00A0b", "``x'' | “x”", "{The {ABC} of} it | The ABC of it",
            "\\& \\% \\$ \\# \\_ \\{ \\} | & % $ # _ { }", "\\emph{x} y | <i>x</i> y", "a\\textendash b | a–b"})
    void latexFromMemory(String written, String read) {
        Loaded loaded = read(Map.of("works.bib", "@book{h, shorthand = {H}, title = {" + written + "}}"));
        Work.Item item = (Work.Item) loaded.catalogue().orElseThrow().works().get("h").description();
        assertEquals("", Trees.shown(loaded.findings()));
        assertEquals(read, item.item().text("title").orElseThrow());
    }

    @Test
    void onlyAReferenceToWhereItIsNotNeedsNoNumber() {
        String coin = Trees.sound().get("coins/lk-1.yaml");
        Map<String, String> works = Map.of("works.yaml", "h: {sign: H, title: Coins}\n",
                "coins/lk-1.yaml", coin + "references:\n  - {work: h, relation: not in}\n");
        Loaded loaded = read(works);
        assertEquals("", Trees.shown(loaded.findings()));
        Reference reference = loaded.catalogue().orElseThrow().coins().get(0).references().get(0);
        assertEquals(Reference.Relation.NOT_IN, reference.relation());
        Loaded missing = read(Map.of("works.yaml", "h: {sign: H, title: Coins}\n", "coins/lk-1.yaml", coin + "references:\n  - {work: h}\n"));
        assertEquals(List.of("missing-key"), missing.findings().all().stream().map(f -> f.code().id()).toList());
    }

    @Property(tries = 300)
    void noTextIsTooMuchForEitherReader(@ForAll @StringLength(max = 60) String text) {
        for (String before : List.of("", "[{", "@book{h, title = {", "@book{h, author = ", "[{\"id\": \"", "@string{a = ")) {
            read(Map.of("works.json", before + text, "works.bib", before + text)).findings().all()
                    .forEach(finding -> assertTrue(finding.what().endsWith("."), finding::what));
        }
    }
}
