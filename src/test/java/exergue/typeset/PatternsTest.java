package exergue.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.model.Inline;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Divisions as the dictionaries of the language have them; from memory. */
class PatternsTest {

    @ParameterizedTest
    @CsvSource({
        "de, Durchmesser, Durch-mes-ser", "de, Stempelstellungen, Stem-pel-stel-lun-gen",
        "de, Übereinstimmung, Über-ein-stim-mung", "de, Gewichtsstatistik, Ge-wichts-sta-tis-tik",
        "fr, approximation, ap-proxi-ma-tion", "fr, diamètre, dia-mètre", "fr, statistiques, sta-tis-tiques",
        "it, approssimazione, ap-pros-si-ma-zione", "it, rovescio, ro-ve-scio", "it, contrassegnato, con-tras-se-gnato",
        "en, measurement, meas-ure-ment", "en, catalogue, cata-logue", "xx, measurement, measurement",
    })
    void divided(String language, String word, String expected) {
        assertEquals(expected, Patterns.of(language).divided(word, '-'));
    }

    @Test
    void noParagraphEndsInTheRestOfAWord() {
        assertEquals("Die Durch|mes|ser der Stempelstellungen.", Inline.plain(Hyphens.of("de").in(
                List.of(new Inline.Words("Die Durchmesser der Stempelstellungen.")))).replace('\u00AD', '|'));
    }

    @Test
    void onlyPlainWordsAreDivided() {
        List<Inline> runs = List.of(new Inline.Words("Durchmesser ARETHANON Stempel-Stellung Paar12345 Numero BasileusX "),
                new Inline.Emphasis(List.of(new Inline.Words("Durchmesser"))),
                new Inline.Link("#work", List.of(new Inline.Words("Hallowbyer"))));
        assertEquals("Durch|mes|ser ARETHANON Stempel-Stellung Paar12345 Nu|mero BasileusX DurchmesserHallowbyer",
                Inline.plain(Hyphens.of("de").in(runs)).replace('\u00AD', '|'));
    }
}
