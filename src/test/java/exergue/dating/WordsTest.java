package exergue.dating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.dating.DateStyle.Centuries;
import exergue.dating.DateStyle.Ends;
import exergue.dating.DateStyle.EraWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** From words to EDTF and from EDTF to words. Forms of words: common practice, no source. */
class WordsTest {

    private static final DateStyle OTHER = new DateStyle(DateLanguage.ENGLISH, "ca.", " (?)", EraWords.BCE_CE, Ends.SHORT, Centuries.FIGURES, 1000);

    private static Dating dating(String edtf) {
        return ((Parsed.Accepted) DatingParser.parse(edtf)).dating();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "-0119~/-0109~ | c. 120–110 BC | ca. 120–110 BCE", "-0119 | 120 BC | 120 BCE", "0000 | 1 BC | 1 BCE",
        "0005 | AD 5 | 5 CE", "-0011/0005 | 12 BC–AD 5 | 12 BCE–5 CE", "0117/0138 | AD 117–138 | 117–38 CE",
        "0112/0115 | AD 112–115 | 112–15 CE", "0105/0107 | AD 105–107 | 105–7 CE", "0098/0117 | AD 98–117 | 98–117 CE",
        "-0119/-0009 | 120–10 BC | 120–10 BCE", "1258 | 1258 | 1258", "1258/1261 | 1258–1261 | 1258–61", "0990/1010 | AD 990–1010 | 990–1010 CE",
        "-0011/1200 | 12 BC–AD 1200 | 12 BCE–1200 CE",
        "-2099/-2000 | 21st century BC | 21st century BCE",
        "-0199/-0100 | second century BC | 2nd century BCE", "-01XX~ | c. second century BC | ca. 2nd century BCE",
        "0101/0200 | second century AD | 2nd century CE", "-0199/0000 | second–first century BC | 2nd–1st century BCE",
        "-0099/0100 | first century BC–first century AD | 1st century BCE–1st century CE", "1201/1300 | thirteenth century | 13th century",
        "-0119? | 120 BC? | 120 BCE (?)", "-0119%/-0109% | c. 120–110 BC? | ca. 120–110 BCE (?)",
        "-0119~/-0109 | from c. 120 BC to 110 BC | from ca. 120 BCE to 110 BCE", "-0119/.. | from 120 BC | from 120 BCE",
        "../-0119 | until 120 BC | until 120 BCE", "-0119/ | from 120 BC, end unknown | from 120 BCE, end unknown",
        "/-0119 | until 120 BC, beginning unknown | until 120 BCE, beginning unknown",
        "-0217-06-04 | 4 June 218 BC | 4 June 218 BCE", "-0217-06~ | c. June 218 BC | ca. June 218 BCE", "-0217-22 | summer 218 BC | summer 218 BCE",
        "-0217-40 | first half of 218 BC | first half of 218 BCE", "-0217-06/-0216-05 | June 218 BC – May 217 BC | June 218 BCE – May 217 BCE",
        "1258-02-10 | 10 February 1258 | 10 February 1258"})
    void printed(String edtf, String words, String otherwise) {
        assertEquals(words, DatePrinter.print(dating(edtf), DateStyle.DEFAULT));
        assertEquals(otherwise, DatePrinter.print(dating(edtf), OTHER));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "c. 120–110 BC | -0119~/-0109~", "ca. 120-110 BC | -0119~/-0109~", "circa 120 BC | -0119~", "about 120 B.C. | -0119~",
        "c.120 BCE | -0119~", "120 B.C.E. | -0119", "A.D. 5 | 0005", "5 AD | 0005", "5 C.E. | 0005", "AD 98–117 | 0098/0117",
        "12 BC–AD 5 | -0011/0005", "12 BC - 5 AD | -0011/0005", "120 to 110 BC | -0119/-0109", "from 120 to 110 BC | -0119/-0109",
        "between 120 and 110 BC | -0119/-0109", "120 BC? | -0119?", "120–110 BC (?) | -0119?/-0109?", "probably c. 120 BC | -0119%",
        "2nd century BC | -0199/-0100", "second century B.C. | -0199/-0100", "2nd–1st century BC | -0199/0000",
        "c. 2nd century BC | -0199~/-0100~", "1st century BC – 1st century AD | -0099/0100", "third cent. AD | 0201/0300",
        "first half of the second century BC | -0199/-0150", "last quarter of the 1st century BC | -0024/0000",
        "second half of the 1st century AD | 0051/0100", "120s BC | -0128/-0119", "1930s | 1930/1939", "c. 1931 | 1931~", "278/7 BC | -0277/-0276",
        "AD 117–38 | 0117/0138", "until 120 BC | ../-0119", "since AD 5 | 0005/..", "-0119 / -0109 | -0119/-0109", "-0419~? | -0419%", "-0419?~/-0409?~ | -0419%/-0409%", "-0119–-0109 | -0119/-0109",
        "0117-0138 | 0117/0138", "1 BC | 0000"})
    void meant(String words, String edtf) {
        FromWords.Meant meant = FromWords.read(words).orElseThrow();
        assertEquals(edtf, meant.edtf());
        assertTrue(meant.sure());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"120–10 BC | -0119/-0009", "after 120 BC | -0119/..", "before 120 BC | ../-0119"})
    void perhapsMeant(String words, String edtf) {
        assertEquals(Optional.of(new FromWords.Meant(edtf, false)), FromWords.read(words));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "c.", "120", "c. 120–110", "Hellenistic", "late second century BC", "0 BC", "AD 0", "110–120 BC", "120–110–100 BC",
        "278/6 BC", "fifth quarter of the first century BC", "12345 BC", "BC", "first", "spring 218 BC"})
    void notGuessed(String words) {
        assertEquals(Optional.empty(), FromWords.read(words));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "-0119~/-0109~ | vers 120–110 av. J.-C. | ca. 120–110 v. Chr. | ca. 120–110 a.C.",
        "-0011/0005 | 12 av. J.-C.–5 apr. J.-C. | 12 v. Chr.–5 n. Chr. | 12 a.C.–5 d.C.",
        "-01XX | IIe siècle av. J.-C. | 2. Jahrhundert v. Chr. | II secolo a.C.",
        "-0199/0100 | IIe siècle av. J.-C.–Ier siècle apr. J.-C. | 2. Jahrhundert v. Chr.–1. Jahrhundert n. Chr. | II secolo a.C.–I secolo d.C.",
        "0301/0400 | IVe siècle apr. J.-C. | 4. Jahrhundert n. Chr. | IV secolo d.C.", "1258 | 1258 | 1258 | 1258",
        "-0119~/-0109 | de vers 120 av. J.-C. à 110 av. J.-C. | von ca. 120 v. Chr. bis 110 v. Chr. | da ca. 120 a.C. a 110 a.C.",
        "-0119/.. | à partir de 120 av. J.-C. | ab 120 v. Chr. | da 120 a.C.",
        "-0217-06-01 | 1er juin 218 av. J.-C. | 1. Juni 218 v. Chr. | 1º giugno 218 a.C.",
        "-0217-21 | printemps 218 av. J.-C. | Frühjahr 218 v. Chr. | primavera 218 a.C."})
    void printedInOtherLanguages(String edtf, String french, String german, String italian) {
        assertEquals(french, DatePrinter.print(dating(edtf), DateStyle.of(DateLanguage.FRENCH)));
        assertEquals(german, DatePrinter.print(dating(edtf), DateStyle.of(DateLanguage.GERMAN)));
        assertEquals(italian, DatePrinter.print(dating(edtf), DateStyle.of(DateLanguage.ITALIAN)));
    }

    /** Years and spans as the house prints them. */
    @Provide
    Arbitrary<Dating> datings() {
        Arbitrary<Integer> years = Arbitraries.integers().between(-2999, 2999);
        Arbitrary<Integer> more = Arbitraries.oneOf(Arbitraries.integers().between(0, 20), Arbitraries.of(99, 199), Arbitraries.integers().between(0, 3000));
        Arbitrary<String> signs = Arbitraries.of("", "~", "?", "%");
        Arbitrary<String> otherSigns = Arbitraries.of("", "", "", "~", "?");
        return Combinators.combine(years, more, signs, otherSigns).as((year, length, sign, other) -> dating(length == 0
                ? FromWords.year(year) + sign
                : FromWords.year(year) + sign + "/" + FromWords.year(Math.min(year + length, 9999)) + (other.isEmpty() ? sign : other)));
    }

    @Property
    void whatIsPrintedIsReadBackAsWhatItWas(@ForAll("datings") Dating dating) {
        List<DateStyle> styles = new ArrayList<>(List.of(OTHER));
        for (DateLanguage language : DateLanguage.values()) {
            DateStyle usual = DateStyle.of(language);
            styles.add(usual);
            styles.add(new DateStyle(language, usual.circa(), usual.uncertain(), EraWords.BCE_CE, Ends.FULL, Centuries.FIGURES, 1000));
        }
        for (DateStyle style : styles) {
            String printed = DatePrinter.print(dating, style);
            assertEquals(dating.edtf(), FromWords.read(printed).map(FromWords.Meant::edtf).orElse("nothing"), printed);
        }
    }

    @Property
    void noYearNoughtIsPrinted(@ForAll @IntRange(min = -3, max = 3) int from, @ForAll @IntRange(min = 0, max = 5) int length) {
        String printed = DatePrinter.print(dating(FromWords.year(from) + "/" + FromWords.year(from + length)), DateStyle.DEFAULT);
        assertTrue(!printed.matches(".*\\b0\\b.*"), printed);
    }
}
