package exergue.edition.methods;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.edition.methods.english.EnglishMethods;
import exergue.edition.methods.french.FrenchMethods;
import exergue.edition.methods.german.GermanMethods;
import exergue.edition.methods.italian.ItalianMethods;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What each language takes as a count that an author states, and what it does not. */
class StatedCountsTest {

    private static final Map<String, MethodsLanguage> LANGUAGES = Map.of("en", new EnglishMethods(),
            "fr", new FrenchMethods(), "de", new GermanMethods(), "it", new ItalianMethods());

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "none", value = {
        "en | The bench gave 1,204 coins and three weights. | 1204 coins; 3 weights",
        "en | There is one die-axis; the axes of 12 specimens agree. | 1 die-axes; 12 coins",
        "en | The balance of 1931 reads to 0.01 g. | none",
        "fr | Nous avons pesé 1 204 monnaies et trois exemplaires. | 1204 coins; 3 coins",
        "fr | Dix-sept poids, deux diamètres, 4 axes. | 17 weights; 2 diameters; 4 die-axes",
        "fr | C’est une monnaie rare, d’un poids de 3,5 poids. | none",
        "de | Gemessen wurden zwölf Münzen, davon 3 Durchmesser. | 12 coins; 3 diameters",
        "de | Von 1.204 Exemplaren haben zwei Stempelstellungen. | 1204 coins; 2 die-axes",
        "de | Das ist eine Münze mit einem Gewicht. | none",
        "it | Abbiamo misurato 1.204 monete e due pesi. | 1204 coins; 2 weights",
        "it | Diciassette esemplari, tre diametri, 4 assi. | 17 coins; 3 diameters; 4 die-axes",
        "it | È una moneta rara. | none",
    })
    void counts(String language, String text, String found) {
        assertEquals(found == null ? "" : found, LANGUAGES.get(language).statedCounts(text).stream()
                .map(count -> count.count() + " " + count.noun()).collect(Collectors.joining("; ")));
    }
}
