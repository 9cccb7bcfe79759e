package exergue.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.Golden;
import exergue.files.MemoryTree;
import exergue.check.Captions;
import exergue.model.Caption;
import exergue.model.Catalogue;
import exergue.model.FindSpot;
import exergue.model.IndexStyle.By;
import exergue.model.IndexStyle.Greek;
import exergue.model.IndexStyle;
import exergue.model.Inline;
import exergue.model.Written;
import exergue.model.Language;
import exergue.model.Prose;
import exergue.model.Reference.Relation;
import exergue.source.SourceReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What is compiled from the entries, as the reader finds it in the back of the book. */
class ApparatusTest {

    private static final Path APPROVED = Path.of("src/test/resources/golden/edition/apparatus");

    private static CatalogueBuilder house() {
        CatalogueBuilder house = new CatalogueBuilder().mint("arethe", "Arethe").ruler("philon", "Philon", "350–320 BC")
                .work("h", "Hallowby", "").work("v", "Varga", "").collection("tm", "Town Museum")
                .collection("orr", "Orr Cabinet").spot("hoard", "The marsh (hoard)", FindSpot.Kind.HOARD)
                .spot("dig", "The lower town", FindSpot.Kind.EXCAVATION);
        house.type("wolf").at("lykaia", "philon").keywords("wolf", "ear of barley").reference("h", "9", Relation.SAME_TYPE)
                .reference("h", "10", Relation.SAME_TYPE).reference("v", "4–6", Relation.VARIANT)
                .reference("v", "77", Relation.NOT_IN);
        house.type("ear").at("arethe", "").keywords("ear of barley").reference("h", "10", Relation.SAME_TYPE);
        house.coin("a1", "ear").in("tm", "1931.10").found("dig", "drain", "D 2").legend("COL · ARETH");
        house.coin("w1", "wolf").in("tm", "1931.9").found("hoard", "", "1").reference("h", "10", Relation.THIS_COIN);
        house.coin("w2", "wolf").found("dig", "", "D 10").under("A. Orr", "1890", "Orr, A.").countermarked("heron in circle");
        house.coin("w3", "wolf").in("orr", "").found("dig", "drain", "D 9").legend("[ΛΥ]ΚΑΙΩΝ")
                .reference("v", "4.1", Relation.SAME_DIES);
        house.coin("w4", "wolf").in("tm", "1931.11").found("hoard", "", "2").legend("ΑΡΕ");
        return house.see("dog", "wolf").see("Orr, A.", "Orr Cabinet").former("w2", 1).former("gone", 2).former("a1", 10);
    }

    /** The text of one part, a line a line. */
    private static String part(Catalogue catalogue) {
        StringBuilder text = new StringBuilder();
        for (Part part : Read.book(catalogue).body()) {
            text.append("# ").append(Inline.plain(part.heading())).append('\n');
            if (part instanceof Part.Listings lists) {
                text.append(Inline.plain(lists.note())).append('\n');
                lists.listings().forEach(list -> text.append("\n## ").append(Inline.plain(list.heading())).append('\n')
                        .append(list.lines().stream().map(ApparatusTest::line).collect(Collectors.joining())));
            } else {
                text.append(Read.text((Part.Text) part)).append('\n');
            }
        }
        return text.toString();
    }

    private static String line(Listing.Line line) {
        return (line.opensGroup() ? "\n" : "") + Inline.plain(line.words()) + " | " + Read.marked(line.numbers()) + "\n";
    }

    @Test
    void concordances() {
        Golden.check(APPROVED.resolve("concordances.txt"), part(house().parts("concordances").build()));
    }

    @Test
    void indexes() {
        Golden.check(APPROVED.resolve("indexes.txt"), part(house().parts("indexes").build()));
    }

    @Test
    void findTables() {
        Golden.check(APPROVED.resolve("finds.txt"), part(house().parts("finds").build()));
    }

    /** What the checks take for known is what the book has. */
    @Test
    void findTablesCanBeReferredTo() {
        Catalogue catalogue = house().parts("finds").build();
        List<String> printed = Read.book(catalogue).body().stream().flatMap(part -> ((Part.Text) part).blocks().stream())
                .filter(Prose.Table.class::isInstance).flatMap(table -> ((Prose.Table) table).caption().stream())
                .map(caption -> caption.id().orElseThrow().value()).toList();
        assertEquals(List.of("hoard-types", "hoard-periods", "dig-types", "dig-periods", "dig-contexts"), printed);
        assertEquals(printed, Captions.ids(Caption.Kind.TABLE, catalogue).stream().map(Written::value).toList());
        assertEquals(List.of(), Captions.ids(Caption.Kind.TABLE, house().parts("catalogue").build()));
    }

    @Test
    void credits() {
        CatalogueBuilder house = house().parts("credits");
        house.coin("x1", "ear").pictured("a.jpg", "b.jpg", "Town Museum", "By permission of the Town Museum");
        house.coin("x2", "ear").pictured("c.jpg", "", "The author", "not needed");
        house.coin("x3", "ear").pictured("", "d.jpg", "Town Museum", "By permission of the Town Museum");
        Golden.check(APPROVED.resolve("credits.txt"), part(house.build()));
    }

    @Test
    void partsThatWouldBeEmptyAreLeftOut() {
        assertEquals(List.of(), Read.book(new CatalogueBuilder().parts("concordances", "indexes", "finds", "credits").build()).body());
    }

    @Test
    void everyLanguageHasItsHeadings() {
        assertEquals(List.of("Konkordanzen", "Register", "Fundtabellen"), Read.book(house().language(Language.GERMAN)
                .parts("concordances", "indexes", "finds").build()).body().stream().map(p -> Inline.plain(p.heading())).toList());
    }

    private static List<String> legends(IndexStyle style) {
        CatalogueBuilder house = new CatalogueBuilder().indexes(style).parts("indexes");
        List<String> legends = List.of("ΒΑΣΙΛΕΩΣ", "ΒΑϹΙΛΕΩϹ ΖΗΝΟϹ", "COL", "ΑΡΚΗ", "ARC", "[ΓΟΡ]ΤΥΝ", "ΖΑΝΚ", "V[...]");
        house.type("a");
        for (int i = 0; i < legends.size(); i++) {
            house.coin("c" + i, "a").legend(legends.get(i));
        }
        Part.Listings indexes = (Part.Listings) Read.book(house.build()).body().get(0);
        return indexes.listings().stream().filter(list -> list.id().equals("index.legends")).flatMap(list -> list.lines().stream())
                .map(line -> Inline.plain(line.words())).toList();
    }

    @Test
    void greekStandsAfterLatinAndBracketsDoNotCount() {
        assertEquals(List.of("ARC", "COL", "V[...]", "ΑΡΚΗ", "ΒΑΣΙΛΕΩΣ", "ΒΑϹΙΛΕΩϹ ΖΗΝΟϹ", "[ΓΟΡ]ΤΥΝ", "ΖΑΝΚ"),
                legends(IndexStyle.DEFAULT));
    }

    @Test
    void orGreekStandsWithTheLatinLettersItIsTransliteratedBy() {
        assertEquals(List.of("ARC", "ΑΡΚΗ", "ΒΑΣΙΛΕΩΣ", "ΒΑϹΙΛΕΩϹ ΖΗΝΟϹ", "COL", "[ΓΟΡ]ΤΥΝ", "V[...]", "ΖΑΝΚ"),
                legends(new IndexStyle(By.NUMBERS, Greek.MERGED, IndexStyle.CrossReferences.NUMBERS)));
    }

    @Test
    void anIndexByPagesGivesThePagesOnceTheyAreKnown() {
        CatalogueBuilder house = new CatalogueBuilder().parts("catalogue", "indexes")
                .indexes(new IndexStyle(By.PAGES, Greek.AFTER_LATIN, IndexStyle.CrossReferences.NUMBERS_AND_PAGES));
        house.type("a");
        IntStream.range(0, 6).forEach(i -> house.coin("c" + i, "a").note("coin", "c5"));
        Catalogue catalogue = house.build();
        PageMap pages = new PageMap(Map.of("c0", "3", "c1", "3", "c2", "4", "c3", "6", "c4", "9", "c5", "9"), 12);
        Book book = Editor.edit(catalogue, Map.of(), pages).book();
        assertEquals("3–4, 6, 9", Inline.plain(((Part.Listings) book.body().get(1)).listings().get(0).lines().get(0).numbers()));
        assertTrue(book.body().get(0).toString().contains("6, p.\u00A09"), book.body().get(0).toString());
    }

    @Test
    void aSeeReferenceThatLeadsNowhereIsAFinding() {
        CatalogueBuilder house = house().see("hound", "wolves");
        assertEquals(List.of("“hound” sends the reader to “wolves”, which is in no index."),
                Editor.edit(house.build(), Map.of(), PageMap.UNKNOWN).findings().all().stream().map(f -> f.what()).toList());
    }

    /**
     * Twenty coins of three periods against a list of two hundred, a tenth of them of periods not in the catalogue; reckoned by hand.
     */
    @Test
    void aSiteIsComparedWithOtherFinds() throws IOException {
        Map<String, String> files = new TreeMap<>();
        files.put("catalogue.yaml", "title: Coins\nlanguage: en\nparts: {body: [finds]}\n");
        files.put("mints.yaml", "lampron: {name: Lampron}\n");
        files.put("rulers.yaml", "first: {name: First}\nsecond: {name: Second}\nthird: {name: Third}\n");
        files.put("find-spots.yaml", "site:\n  name: The Site\n  kind: excavation\n  compared-with:\n    title: nine sites\n    periods:\n"
                + "      - {period: first, coins: 30}\n      - {period: second, coins: 150}\n    others: 20\n");
        Map.of("first", 8, "second", 11, "third", 1).forEach((ruler, coins) -> {
            files.put("types/" + ruler + ".yaml", "id: " + ruler + "\nmint: lampron\nruler: " + ruler + "\ndenomination: Unit\nmetal: copper\n");
            IntStream.range(0, coins).forEach(i -> files.put("coins/" + ruler + "-" + i + ".yaml",
                    "id: " + ruler + "-" + i + "\ntype: " + ruler + "\nfind: {spot: site}\n"));
        });
        Part.Text finds = (Part.Text) Read.book(SourceReader.read(MemoryTree.ofText(files)).catalogue().orElseThrow()).body().get(0);
        Prose.Table compared = finds.blocks().stream().filter(Prose.Table.class::isInstance).map(Prose.Table.class::cast)
                .filter(table -> Inline.plain(table.head().get(2)).equals("Elsewhere, per thousand")).findFirst().orElseThrow();
        assertEquals(List.of("First 400.0 150.0 +250.0 +250.0", "Second 550.0 750.0 −200.0 +50.0", "Third 50.0 0.0 +50.0 +100.0",
                "Other periods 0.0 100.0 −100.0 0.0"), compared.rows().stream()
                .map(row -> row.stream().map(Inline::plain).collect(Collectors.joining(" "))).toList());
    }
}
