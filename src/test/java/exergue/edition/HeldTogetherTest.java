package exergue.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeldTogetherTest {

    /**
     * A tilde stands for a space that holds. Values, "%" and "°C": Interinstitutional Style Guide of the Publications
     * Office of the European Union, 6.4; dimensions, equations and groups of digits: common practice, no source.
     */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "a unit of about 9.20 g, with; a unit of about 9.20~g, with",
        "(drachm of 3.96 g); (drachm of 3.96~g)",
        "17–19 mm at 6½ h; 17–19~mm at 6½~h",
        "9.7 g† and 7.1 g; 9.7~g† and 7.1~g",
        "9.39 g/cm³ in water; 9.39~g/cm³ in water",
        "95 % of 20 °C; 95~% of 20~°C",
        "ten gold coins, 12 gold coins; ten gold coins, 12 gold coins",
        "18 × 17 mm; 18~×~17~mm",
        "1 grain = 0.0648 g; 1 grain~= 0.0648~g",
        "12 345 coins; 12~345 coins",
        "in 1987 200 were seen; in 1987 200 were seen"})
    void figuresAndUnits(String text, String expected) {
        assertEquals(expected, HeldTogether.noBreak(text).replace('\u00A0', '~'));
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "As no. 42 and nos 89, 90; As no.~42 and nos~89, 90",
        "(see pl. 3, fig. 2); (see pl.~3, fig.~2)",
        "Pl. IV and p. xii; Pl.~IV and p.~xii",
        "sale 1897, lot 14 (part); sale 1897, lot~14 (part)",
        "c. 420 to 351 BC, before 31 AD; c.~420 to 351~BC, before 31~AD",
        "Nr. 7, Taf. 4, S. 17, Abb. 2; Nr.~7, Taf.~4, S.~17, Abb.~2",
        "env. 420 av. J.-C.; env.~420~av.~J.-C.",
        "um 420 v. Chr. und n. Chr.; um 420~v.~Chr. und n.~Chr.",
        "tav. IV, p. 12, 351 a.C.; tav.~IV, p.~12, 351~a.C.",
        "Table 5 divides Fig. 4; Table~5 divides Fig.~4",
        "the lamp. 12 coins; the lamp. 12 coins"})
    void whatIsCounted(String text, String expected) {
        assertEquals(expected, HeldTogether.noBreak(text).replace('\u00A0', '~'));
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "by J. P. Ollerbeck, 1911; by J.~P.~Ollerbeck, 1911",
        "R. St J. Pellingham; R.~St~J.~Pellingham",
        "bought by Sir E. Harrowgill; bought by Sir~E.~Harrowgill",
        "J.-P. Merrevaux and Dr M. Haldring; J.-P.~Merrevaux and Dr~M.~Haldring",
        "Telanor II reclining, Orvannius IIvir; Telanor~II reclining, Orvannius IIvir",
        "z. B. und d. h. so; z.~B. und d.~h. so",
        "in l. field, star; in l. field, star",
        "heron r. The next; heron r. The next"})
    void names(String text, String expected) {
        assertEquals(expected, HeldTogether.noBreak(text).replace('\u00A0', '~'));
    }

    /**
     * Before high marks in French: Lexique des règles typographiques en usage à l’Imprimerie nationale, as quoted by
     * S. Viguier, Ponctuation et espaces. Quotation marks and dashes: common practice, no source.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "deux mots : un ; deux ! trois ? | deux mots~: un~; deux~! trois~?",
        "le « héron » debout | le «~héron~» debout",
        "war – and peace | war~– and peace",
        "a fall of −3 °C | a fall of −3~°C"})
    void marksThatOpenNoLine(String text, String expected) {
        assertEquals(expected, HeldTogether.noBreak(text).replace('\u00A0', '~'));
    }

    @Property
    void nothingButSpacesIsChanged(@ForAll @StringLength(max = 40) @CharRange(from = ' ', to = 'z') String text) {
        String held = HeldTogether.noBreak(text);
        assertEquals(text, held.replace('\u00A0', ' '));
        assertEquals(held, HeldTogether.noBreak(held));
        assertFalse(held.startsWith("\u00A0") || held.endsWith("\u00A0"));
    }
}
