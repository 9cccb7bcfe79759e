package exergue.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.edition.EntryBlock.Entry;
import exergue.edition.EntryBlock.IssueHeading;
import exergue.edition.EntryBlock.MintHeading;
import exergue.edition.EntryBlock.RulerHeading;
import exergue.model.Catalogue;
import exergue.model.Damage;
import exergue.model.HouseStyle.CoinOrder;
import exergue.model.Inline;
import exergue.model.Making;
import exergue.model.Prose;
import exergue.model.Reference.Relation;
import exergue.model.Shape;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class EditorTest {

    private final CatalogueBuilder catalogue = new CatalogueBuilder();

    @Test
    void headingsStandWhereMintRulerOrIssueChange() {
        catalogue.mint("peiris", "Peiris").ruler("philon", "Philon", "c. 300 BC").ruler("nikaron", "Nikaron", "");
        catalogue.type("p1").at("peiris", "philon");
        catalogue.type("l3").at("lykaia", "nikaron");
        catalogue.type("l10").at("lykaia", "philon").issue("First");
        catalogue.type("l9").at("lykaia", "philon").issue("First");
        catalogue.type("l8").at("lykaia", "philon").order(9).issue("Wolf");
        catalogue.type("l1").at("lykaia", "");
        catalogue.type("l12").at("lykaia", "philon").order(10);
        assertEquals(List.of("Lykaia", "type.l1", "Philon c. 300 BC", "type.l12", "Wolf", "type.l8", "First", "type.l9", "type.l10",
                "Nikaron ", "type.l3", "Peiris", "Philon c. 300 BC", "type.p1"),
                Read.blocks(catalogue.build()).stream().map(EditorTest::shown).toList());
    }

    private static String shown(EntryBlock block) {
        if (block instanceof MintHeading mint) {
            return mint.name();
        }
        if (block instanceof RulerHeading ruler) {
            return ruler.name() + " " + ruler.dates().orElse("");
        }
        return block instanceof IssueHeading issue ? issue.name() : ((Entry) block).id();
    }

    @Test
    void numbersRunOnAndTypesHangTheirRange() {
        catalogue.type("a");
        catalogue.type("b");
        catalogue.type("c");
        catalogue.coin("b10", "b");
        catalogue.coin("b9", "b");
        catalogue.coin("c1", "c");
        assertEquals(List.of("–", "1–2", "3"), Read.entries(catalogue.build()).stream().map(Entry::numbers).toList());
        assertEquals(List.of("b9", "b10", "c1"), ids());
    }

    @Test
    void aPinnedNumberStaysAndTheOthersFillTheGaps() {
        catalogue.type("a");
        catalogue.type("b");
        catalogue.coin("a1", "a");
        catalogue.coin("a2", "a").number(4);
        catalogue.coin("a3", "a");
        catalogue.coin("b1", "b").number(2);
        catalogue.coin("b2", "b");
        assertEquals(List.of("1", "4", "3", "2", "5"),
                Read.specimens(catalogue.build()).stream().map(Specimen::number).toList());
        assertEquals(List.of("1, 3–4", "2, 5"), Read.entries(catalogue.build()).stream().map(Entry::numbers).toList());
    }

    @Test
    void coinsStandAsTheHouseOrdersThem() {
        catalogue.type("a");
        catalogue.coin("c1", "a").measured("bench", "3.1 g", "", "").dies("O2", "R1");
        catalogue.coin("c2", "a").measured("bench", "3.3 g", "", "");
        catalogue.coin("c3", "a").dies("O1", "R10");
        catalogue.coin("c4", "a").measured("bench", "3.2 g", "", "").dies("O1", "R9");
        assertEquals(List.of("c1", "c2", "c3", "c4"), ids());
        catalogue.coinOrder(CoinOrder.BY_DIES);
        assertEquals(List.of("c4", "c3", "c1", "c2"), ids());
        catalogue.coinOrder(CoinOrder.BY_WEIGHT);
        assertEquals(List.of("c2", "c4", "c1", "c3"), ids());
    }

    private List<String> ids() {
        return Read.specimens(catalogue.build()).stream().map(Specimen::id).toList();
    }

    @Test
    void anEntrySaysWhatIsUnusualAndGroupsItsReferences() {
        catalogue.work("h", "Hallowby", "").work("o", "Orr", "Annals");
        catalogue.type("a").uniface().made(Making.CAST).shape(Shape.SQUARE, "").reference("o", "7", Relation.VARIANT)
                .reference("h", "12", Relation.SAME_TYPE).reference("o", "", Relation.NOT_IN)
                .reference("h", "", Relation.NOT_IN);
        Entry entry = Read.entries(catalogue.build()).get(0);
        assertEquals(List.of("Drachm", "AR", "cast", "square", "c. 300 BC"), entry.firstLine());
        assertEquals(List.of("Obv. Head of a wolf r.", "Rev. Uniface."), entry.sides().stream()
                .map(side -> side.label() + " " + Inline.plain(side.description())).toList());
        assertEquals(List.of("Hallowby\u00A012", "variant: Orr\u00A07", "not\u00A0in Orr; Hallowby"),
                ReferenceTexts.lines(entry.references()));
    }

    @Test
    void aSpecimenSaysDamageThenDifferencesThenReferencesThenProvenance() {
        catalogue.work("h", "Hallowby", "").collection("museum", "AM").spot("hill", "The hill", "Square N7", false);
        catalogue.type("a");
        catalogue.coin("c", "a").damaged(Damage.BROKEN, Damage.PIERCED).legend("ΛΥΚΑΙ").in("museum", "P 12")
                .found("hill", "layer 3", "45").reference("h", "3", Relation.THIS_COIN)
                .reference("h", "4", Relation.SAME_DIES).reference("h", "5", Relation.THIS_COIN).from("bought in 1901").dies("O1", "");
        Specimen coin = Read.specimens(catalogue.build()).get(0);
        assertEquals("Broken, pierced. Obv. legend ΛΥΚΑΙ. The hill, layer 3, 45. This\u00A0coin: Hallowby\u00A03; "
                + "Hallowby\u00A05. Same\u00A0dies: Hallowby\u00A04. Bought in 1901.", Inline.plain(coin.remarks()));
        assertEquals("AM\u00A0P\u00A012", coin.whereabouts());
        assertEquals("O1/–", coin.dies());
        assertTrue(Inline.plain(coin.text()).startsWith("AM\u00A0P\u00A012. Broken, pierced."));
    }

    @Test
    void aSentenceThatEndsInAnAbbreviationHasNoSecondStop() {
        catalogue.collection("dig", "Exp.").spot("hill", "The hill", "", false);
        catalogue.type("a");
        catalogue.coin("c1", "a").in("dig", "").legend("IMP. CAES.").from("Orr coll.");
        catalogue.coin("c2", "a").in("dig", "");
        catalogue.coin("c3", "a").from("seen by “A. B.”");
        catalogue.coin("c4", "a");
        assertEquals(List.of("Exp. Obv. legend IMP. CAES. Orr coll.", "Exp.", "Seen by “A. B.”", ""),
                Read.specimens(catalogue.build()).stream().map(coin -> Inline.plain(coin.text())).toList());
    }

    @Test
    void theExactPlaceIsPrintedOnlyWhereItsFileAllowsIt() {
        catalogue.spot("hill", "The hill", "Square N7", false).spot("open", "The open site", "Square A1", true);
        catalogue.type("a");
        catalogue.coin("c1", "a").found("hill", "", "45");
        catalogue.coin("c2", "a").found("open", "", "46");
        Catalogue built = catalogue.build();
        assertEquals(List.of("The hill, 45", "The open site, Square A1, 46"),
                Read.specimens(built).stream().map(Specimen::whereabouts).toList());
        String everything = Read.book(built) + " " + DataRows.of(built, Read.book(built), PageMap.UNKNOWN)
                + " " + PrintedTexts.of(built).stream().map(Written::value).toList();
        assertFalse(everything.contains("Square N7"));
    }

    @Test
    void crossReferencesBecomeNumbersNamesAndSigns() {
        catalogue.work("h", "Hallowby", "").ruler("philon", "Philon", "");
        catalogue.type("a").at("lykaia", "philon");
        catalogue.coin("c1", "a").note("coin", "c2").note("type", "a").note("mint", "lykaia").note("ruler", "philon")
                .note("work", "h").note("coin", "nowhere");
        catalogue.coin("c2", "a");
        assertEquals(List.of("2", "1–2", "Lykaia", "Philon", "Hallowby", "nowhere"),
                Read.specimens(catalogue.build()).get(0).notes().stream()
                        .map(block -> Inline.plain(((Prose.Paragraph) block).runs())).toList());
    }

    @Test
    void aWorkCitedInProseIsItsSignAndWhatIsCitedInIt() {
        catalogue.work("h", "Hallowby", "");
        List<Inline> runs = CrossReferences.of(catalogue.build(), BookOrder.of(catalogue.build()),
                Numbering.of(BookOrder.of(catalogue.build())), anchor -> "").inRuns(List.of(new Inline.CrossReference("work", "h", "", CatalogueBuilder.PLACE),
                        new Inline.CrossReference("work", "h", "pl. 3", CatalogueBuilder.PLACE)));
        assertEquals("HallowbyHallowby\u00A0pl. 3", Inline.plain(runs));
        assertEquals("#work.h", ((Inline.Link) runs.get(1)).address());
    }

    @Test
    void worksStandInTheOrderOfTheirSigns() {
        catalogue.work("z", "Orr", "Annals").work("e", "Émile", "").work("a", "Dorn", "").work("f", "Farn", "");
        Part.WorksCited works = (Part.WorksCited) Read.book(catalogue.build()).body().get(2);
        assertEquals(List.of("Dorn", "Émile", "Farn", "Orr"), works.works().stream().map(Part.WorkLine::sign).toList());
        assertEquals("T. Hallowby (1894), On coins, Aldmoor.", Inline.plain(works.works().get(0).full()));
        assertEquals("T. Hallowby (1894), “On coins”, Annals, Aldmoor.", Inline.plain(works.works().get(3).full()));
    }

    @Test
    void everyAnchorIsUnique() {
        catalogue.ruler("a", "A", "").mint("a", "A");
        catalogue.type("a").at("a", "a").issue("a");
        catalogue.type("b").at("lykaia", "a").issue("a");
        catalogue.coin("a", "a");
        catalogue.coin("b", "b");
        List<String> anchors = new ArrayList<>();
        Read.book(catalogue.build()).body().forEach(part -> anchors.add(part.id()));
        for (EntryBlock block : Read.blocks(catalogue.build())) {
            anchors.add(block instanceof MintHeading mint ? mint.id() : block instanceof RulerHeading ruler ? ruler.id()
                    : block instanceof IssueHeading issue ? issue.id() : ((Entry) block).id());
        }
        Read.specimens(catalogue.build()).forEach(coin -> anchors.add(coin.id()));
        assertEquals(anchors.size(), new HashSet<>(anchors).size());
        assertEquals(13, anchors.size());
    }

    @Test
    void dataRowsGiveWhatWasRecordedBesideWhatIsPrinted() {
        catalogue.convention(CatalogueBuilder.old());
        catalogue.type("a");
        catalogue.coin("c", "a").measured("old-1894", "61.5 gr", "", "missing: not recorded").damaged(Damage.CHIPPED);
        Catalogue built = catalogue.build();
        DataRow row = DataRows.of(built, Read.book(built), new PageMap(Map.of("c", "47"), 60)).get(0);
        DataRow.Figure weight = row.figures().get(0);
        assertEquals("61.5 gr", weight.recorded());
        assertEquals("3.985132965", weight.values().get(0).toPlainString());
        assertEquals("3.99\u202Fg†", weight.printed());
        assertEquals("old-1894", weight.convention().orElseThrow());
        assertEquals("not recorded", row.figures().get(2).why().orElseThrow());
        assertEquals("missing", row.figures().get(1).status());
        assertEquals("47", row.page().orElseThrow());
        assertFalse(row.weightCounts());
    }

    @Test
    void everyLegendAndDescriptionCanBeTraced() {
        catalogue.type("a");
        List<String> texts = PrintedTexts.of(catalogue.build()).stream().map(Written::value).toList();
        assertTrue(texts.containsAll(List.of("ΛΥΚΑΙΩΝ", "Head of a wolf r.", "Lykaia", "†", "Coins")));
    }

    @Test
    void aPictureSaysInWordsWhatItShows() {
        catalogue.type("a");
        catalogue.coin("c1", "a").pictured("photos/c1-o.jpg", "photos/c1-r.jpg", "Aldmoor Museum");
        catalogue.coin("c2", "a").pictured("", "photos/c2-r.jpg", "");
        catalogue.coin("c3", "a").pictured("", "", "Aldmoor Museum");
        List<Specimen> coins = Read.specimens(catalogue.build());
        Specimen.Picture both = coins.get(0).picture().orElseThrow();
        assertEquals("photos/c1-o.jpg", both.obverse().orElseThrow().path());
        assertEquals("Obverse of no. 1: Head of a wolf r.", both.obverse().orElseThrow().alternative());
        assertEquals("Reverse of no. 1: Ear of barley.", both.reverse().orElseThrow().alternative());
        assertEquals("Aldmoor Museum", both.credit().orElseThrow());
        assertTrue(coins.get(1).picture().orElseThrow().obverse().isEmpty());
        assertTrue(coins.get(2).picture().isEmpty());
    }

    @Test
    void aRunningHeadDoesNotNameTheMintTwice() {
        CatalogueBuilder house = new CatalogueBuilder().mint("arethe", "Arethe").ruler("philon", "Philon", "")
                .ruler("settlers", "The settlers at Arethe", "");
        house.type("a").at("arethe", "philon");
        house.type("b").at("arethe", "settlers");
        house.coin("c1", "a");
        house.coin("c2", "b");
        assertEquals(List.of("Arethe, Philon", "The settlers at Arethe"),
                Read.entries(house.build()).stream().map(Entry::runningHead).sorted().toList());
    }
}
