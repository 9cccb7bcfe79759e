package exergue.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.edition.EntryBlock.Entry;
import exergue.model.BookWord;
import exergue.model.Catalogue;
import exergue.model.Damage;
import exergue.model.Inline;
import exergue.model.Language;
import exergue.model.Making;
import exergue.model.Reference.Relation;
import exergue.model.Shape;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the program itself says of a type and a coin, in the language of the book. */
class BookWordsTest {

    private static CatalogueBuilder catalogue(Language language) {
        CatalogueBuilder catalogue = new CatalogueBuilder().language(language).work("hallowby", "Hallowby", "");
        catalogue.type("t").made(Making.CAST).shape(Shape.SQUARE, "").uniface();
        catalogue.coin("c", "t").measured("bench", "c. 3.87 g", "18 x 17 mm", "").damaged(Damage.PIERCED)
                .legend("KOINON").reference("hallowby", "12", Relation.THIS_COIN).pictured("o.jpg", "r.jpg", "");
        return catalogue;
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "ENGLISH; cast, square; Rev. Uniface.; Pierced. Obv. legend KOINON. This~coin: Hallowby~12.; Reverse of no. 1; c.~3.87~g†",
        "FRENCH; coulée, carrée; R/ Uniface.; Percée. D/ légende KOINON. Cet~exemplaire~: Hallowby~12.; Revers du n° 1; env.~3,87~g†",
        "GERMAN; gegossen, quadratisch; Rs. Einseitig.; Gelocht. Vs. Legende KOINON. Dieses~Exemplar: Hallowby~12.; Rückseite von Nr. 1; ca.~3,87~g†",
        "ITALIAN; fusa, quadrata; R/ Uniface.; Forata. D/ legenda KOINON. Questo~esemplare: Hallowby~12.; Rovescio del n. 1; ca.~3,87~g†",
    })
    void theEntryIsInTheLanguage(Language language, String making, String reverse, String remarks, String picture,
                                 String weight) {
        Catalogue catalogue = catalogue(language).build();
        Entry entry = Read.entries(catalogue).get(0);
        Specimen coin = entry.specimens().get(0);
        assertEquals(making, String.join(", ", entry.firstLine().subList(2, 4)));
        EntryBlock.SideText back = entry.sides().get(entry.sides().size() - 1);
        assertEquals(reverse, back.label() + " " + Inline.plain(back.description()));
        assertEquals(remarks, shown(Inline.plain(coin.remarks())));
        assertEquals(picture, coin.picture().orElseThrow().reverse().orElseThrow().alternative());
        assertEquals(weight, shown(coin.line()).split(",~? ")[0]);
    }

    @Test
    void theHouseCanHaveAnyWordOtherwise() {
        Catalogue catalogue = catalogue(Language.GERMAN).words(Map.of(BookWord.PIERCED, "durchbohrt",
                BookWord.THIS_COIN, "dies")).build();
        assertEquals("Durchbohrt. Vs. Legende KOINON. Dies: Hallowby~12.",
                shown(Inline.plain(Read.specimens(catalogue).get(0).remarks())));
    }

    private static String shown(String text) {
        return text.replace('\u00A0', '~').replace('\u202F', '~');
    }
}
