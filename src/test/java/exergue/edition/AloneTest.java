package exergue.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import exergue.edition.EntryBlock.ReferenceText;
import exergue.edition.EntryBlock.SideText;
import exergue.model.Damage;
import exergue.model.Inline;
import exergue.model.Language;
import exergue.model.Reference.Relation;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is printed of a coin that has an entry of its own. */
class AloneTest {

    private final CatalogueBuilder catalogue = new CatalogueBuilder();

    private Alone alone(int nth) {
        return Read.specimens(catalogue.build()).get(nth).alone();
    }

    private static String shown(SideText side) {
        return side.label() + " " + side.legend().orElse("–") + " " + Inline.plain(side.description());
    }

    @Test
    void itsOwnLegendTakesThePlaceOfTheTypes() {
        catalogue.type("a");
        catalogue.coin("c1", "a");
        catalogue.coin("c2", "a").legend("ΛΥΚ[ΑΙ]");
        String description = Inline.plain(alone(0).sides().get(0).description());
        assertEquals("Obv. ΛΥΚ[ΑΙ] " + description, shown(alone(1).sides().get(0)));
        assertEquals(shown(alone(0).sides().get(1)), shown(alone(1).sides().get(1)));
        assertEquals("Obv. legend ΛΥΚ[ΑΙ].", Inline.plain(alone(1).differs()));
        assertEquals("", Inline.plain(alone(0).differs()));
    }

    @Test
    void onlyTheFirstCoinOfATypeIsNotLikeAnother() {
        catalogue.type("a");
        catalogue.type("b");
        catalogue.coin("a1", "a");
        catalogue.coin("a2", "a");
        catalogue.coin("b1", "b");
        catalogue.coin("b2", "b");
        assertEquals(List.of("", "As no.\u00A01.", "", "As no.\u00A03."),
                Read.specimens(catalogue.build()).stream().map(coin -> coin.alone().likeFirst()).toList());
        catalogue.language(Language.GERMAN);
        assertEquals("Wie Nr.\u00A01.", alone(1).likeFirst());
    }

    @Test
    void theFindHasItsNumberFirstAndTheCollectionStandsApart() {
        catalogue.spot("harbour", "The harbour", "the third pier", false).collection("town", "Town").type("a");
        catalogue.coin("c1", "a").found("harbour", "trench C, layer 4", "C 118").in("town", "1931.4");
        assertEquals("C\u00A0118, The harbour, trench C, layer 4.", alone(0).found());
        assertEquals("Town\u00A01931.4.", alone(0).kept());
    }

    @Test
    void theExactPlaceIsNotPrintedUnlessItMayBe() {
        catalogue.spot("harbour", "The harbour", "the third pier", false)
                .spot("mole", "The mole", "its head", true).type("a");
        catalogue.coin("c1", "a").found("harbour", "", "");
        catalogue.coin("c2", "a").found("mole", "", "");
        assertFalse(alone(0).toString().contains("pier"));
        assertEquals("The mole, its head.", alone(1).found());
    }

    @Test
    void referencesOfTypeAndCoinStandTogetherAndItsOwnApart() {
        catalogue.work("hall", "Hallowby", "").type("a").reference("hall", "12", Relation.SAME_TYPE);
        catalogue.coin("c1", "a").reference("hall", "14", Relation.THIS_COIN).damaged(Damage.PIERCED).from("Orr cabinet");
        assertEquals(List.of(new ReferenceText("", "Hallowby", "12"), new ReferenceText("this\u00A0coin:", "Hallowby", "14")),
                alone(0).references());
        assertEquals(List.of(new ReferenceText("this\u00A0coin:", "Hallowby", "14")), alone(0).ownReferences());
        assertEquals("Pierced.", Inline.plain(alone(0).condition()));
        assertEquals("Orr cabinet.", alone(0).provenance());
    }
}
