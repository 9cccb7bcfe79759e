package exergue.legend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.legend.Part.Bracketed;
import exergue.legend.Part.Damaged;
import exergue.legend.Part.Ligature;
import exergue.legend.Part.LineEnd;
import exergue.legend.Part.Lost;
import exergue.legend.Part.Plain;
import java.text.Normalizer;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Signs of the Leiden system (Leiden 1931/32; Dow, Conventions in Editing, 1969; from memory). */
class LegendTest {

    private static Legend sound(String text) {
        Parsed parsed = LegendParser.parse(text);
        assertEquals(List.of(), parsed.remarks(), text);
        return parsed.legend();
    }

    private static String faults(String text) {
        return LegendParser.parse(text).remarks().stream().map(r -> r.fault().id().replace("legend-", "") + "@" + r.offset() + "+" + r.length())
                .collect(Collectors.joining(" "));
    }

    @Test
    void parts() {
        assertEquals(List.of(new Plain("ΒΑ"), new Bracketed(Bracket.RESTORED, List.of(new Plain("ΣΙ"))), new Plain(" "),
                new Bracketed(Bracket.RESTORED, List.of(new Lost(OptionalInt.of(3))))), sound("ΒΑ[ΣΙ] [...]").parts());
        assertEquals(List.of(new Plain("Α"), new Bracketed(Bracket.EXPANDED, List.of(new Plain("ΒΓ"))), new LineEnd("|"),
                new Damaged("ΔΕ"), new Plain("Ζ"), new Ligature("ΗΘ")), sound("Α(ΒΓ)|Δ\u0323Ε\u0323ΖΗ\u0361Θ").parts());
        assertEquals(List.of(new Bracketed(Bracket.ERASED, List.of(new Plain("ΑΒ"), new Bracketed(Bracket.RESTORED,
                List.of(new Plain("Γ"), new Lost(OptionalInt.of(2))))))), sound("⟦ΑΒ[Γ..]⟧").parts());
        assertEquals(List.of(new Bracketed(Bracket.RESTORED, List.of(new Lost(OptionalInt.empty())))), sound("[---]").parts());
        assertEquals(List.of(new Plain("COL · PHORM. – A")), sound("COL · PHORM. – A").parts());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
        "ΒΑΣΙΛΕΩΣ [ΟΡΥΑΝΔ]ΡΟΥ | ΒΑΣΙΛΕΩΣ [ΟΡΥΑΝΔ]ΡΟΥ | ΒΑΣΙΛΕΩΣΟΡΥΑΝΔΡΟΥ | ΒΑΣΙΛΕΩΣ ΡΟΥ",
        "[..]ΚΗ | [..]ΚΗ | ΚΗ | ΚΗ", "[. . .]ΚΗ | [...]ΚΗ | ΚΗ | ΚΗ", "[…]ΚΗ | [...]ΚΗ | ΚΗ | ΚΗ", "ΚΗ[-] | ΚΗ[– – –] | ΚΗ | ΚΗ",
        "ΚΗ[— —] | ΚΗ[– – –] | ΚΗ | ΚΗ", "⟦ΤΗΛΑ\u0323Ν[ΟΡΟΣ]⟧ | ⟦ΤΗΛΑ\u0323Ν[ΟΡΟΣ]⟧ | ΤΗΛΑΝΟΡΟΣ | ΤΗΛΑΝ",
        "[[ΤΗΛΑΝ[ΟΡΟΣ]]] | ⟦ΤΗΛΑΝ[ΟΡΟΣ]⟧ | ΤΗΛΑΝΟΡΟΣ | ΤΗΛΑΝ", "[[ΤΗ]]ΛΑ[ΝΟ] | ⟦ΤΗ⟧ΛΑ[ΝΟ] | ΤΗΛΑΝΟ | ΤΗΛΑ", "ΠΡΥ(ΤΑΝΙϹ) | ΠΡΥ(ΤΑΝΙϹ) | ΠΡΥΤΑΝΙΣ | ΠΡΥ",
        "ΟΡΜΑϹ<Ϲ>ΕΩΝ | ΟΡΜΑϹ⟨Ϲ⟩ΕΩΝ | ΟΡΜΑΣΣΕΩΝ | ΟΡΜΑϹΕΩΝ", "ΟΡΜ{Μ}Α | ΟΡΜ{Μ}Α | ΟΡΜΑ | ΟΡΜΜΑ", "COL · PḤ[ORM]ANṬ | COL · PḤ[ORM]ANṬ | COLPHORMANT | COL PHANT",
        "Α – [Ρ] | Α – [Ρ] | ΑΡ | Α", "Ν\u0361Η\u0361Ε | Ν\u0361Η\u0361Ε | ΝΗΕ | ΝΗΕ", "βασιλέως | βασιλέως | ΒΑΣΙΛΕΩΣ | βασιλέως",
        "[Β Ϛ..] | [Β Ϛ..] | ΒϚ | ~~", "ΒΑ/ΟΡ | ΒΑ/ΟΡ | ΒΑΟΡ | ΒΑ ΟΡ", "[ΒΑ(ΣΙΛΕΩΣ)] | [ΒΑ(ΣΙΛΕΩΣ)] | ΒΑΣΙΛΕΩΣ | ~~",
        "[ΑΒ – ΓΔ] | [ΑΒ – ΓΔ] | ΑΒΓΔ | ~~", "𐅘 ΙΔ | 𐅘 ΙΔ | 𐅘ΙΔ | 𐅘 ΙΔ"})
    void forms(String text, String printed, String sortKey, String onCoin) {
        Legend legend = sound(text);
        assertEquals(printed, legend.printed());
        assertEquals(sortKey, legend.sortKey());
        assertEquals(onCoin, legend.plainLetters());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "ΒΑ[ΣΙ | unbalanced@2+1", "ΒΑ]ΣΙ | unbalanced@2+1", "(ΒΑ⟦ΣΙ | nested@3+1 unbalanced@3+1 unbalanced@0+1", "[[ΒΑ] | nested@1+1 unbalanced@0+1",
        "ΒΑ[ΣΙ(ΛΕ]ΩΣ) | brackets-crossed@8+1 unbalanced@11+1", "ΒΑ(ΣΙ[ΛΕ]) | nested@5+1", "[ΒΑ[ΣΙ]] | nested@3+1", "⟨Α⟦Β⟧⟩ | nested@2+1",
        "{Α(Β)} | nested@2+1", "Α[] | empty-brackets@1+2", "Α( ) | empty-brackets@1+3", "[[]] | empty-brackets@0+4",
        "𐅘[ | unbalanced@1+1", "ΒΑ \u0323Σ | loose-mark@2+2", "\u0323Σ | loose-mark@0+1", "Ν\u0361 Η | loose-mark@0+2", "Ν\u0361 | loose-mark@0+2",
        "[Ν\u0361] | loose-mark@1+2", "Α]Β[ | unbalanced@1+1 unbalanced@3+1"})
    void faultsStandAtTheirColumns(String text, String expected) {
        assertEquals(expected, faults(text));
        assertEquals(text, LegendParser.parse(text).legend().printed());
    }

    @ParameterizedTest
    @ValueSource(strings = {"[", "]", "[[", "(", "⟦", "<", "{", "[ ", "\u0323", "Ν\u0361", "- ", "[.", "[-", "|", "[]", "([)]", "[[]]]"})
    void aLongRowOfSignsIsRefusedWithFewWords(String sign) {
        long remarks = LegendParser.parse(sign.repeat(100_000)).remarks().size();
        assertTrue(remarks < 40, remarks + " remarks");
    }

    @Provide
    Arbitrary<String> signs() {
        return Arbitraries.of("Α", "Β", "ς", "Ϲ", "Ḥ", "é", " ", ".", "–", "-", "[", "]", "(", ")", "<", ">", "⟨", "⟩", "{", "}", "⟦", "⟧", "[[", "]]",
                "|", "/", "·", "\u0323", "\u0361", "…", "𐅘").list().ofMaxSize(10).map(parts -> Normalizer.normalize(String.join("", parts), Normalizer.Form.NFC));
    }

    @Property(tries = 3000)
    void whatIsPrintedMeansTheSame(@ForAll("signs") String text) {
        Parsed parsed = LegendParser.parse(text);
        if (parsed.remarks().isEmpty()) {
            String printed = parsed.legend().printed();
            assertEquals(parsed.legend().parts(), sound(printed).parts());
            assertEquals(printed, sound(printed).printed());
        } else {
            parsed.remarks().forEach(r -> assertTrue(r.offset() >= 0 && r.length() > 0
                    && r.offset() + r.length() <= text.codePointCount(0, text.length()), text));
        }
    }

    @Property
    void bracketsAndMarksDoNotChangeTheSorting(@ForAll("signs") String text) {
        Parsed parsed = LegendParser.parse(text);
        if (parsed.remarks().isEmpty() && !text.contains("{")) {
            assertEquals(parsed.legend().sortKey(), Legend.asWritten(text).sortKey());
        }
    }
}
