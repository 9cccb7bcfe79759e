package exergue.legend;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalInt;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ApartTest {

    /** The usual worked example of the edit distance; from memory, like the second. */
    @ParameterizedTest
    @CsvSource({"KITTEN, SITTING, 3", "SATURDAY, SUNDAY, 3", "ΛΑΚ, ΛΑΚ, 0", "ΛΑΚ, ΛΑ, 1"})
    void editDistancesFromMemory(String one, String other, int apart) {
        assertEquals(OptionalInt.of(apart), apart(one, other));
        assertEquals(OptionalInt.of(apart), apart(other, one));
    }

    @ParameterizedTest
    @CsvSource({"[...]ΙΛΕΩΣ, ΒΑΣΙΛΕΩΣ, 0", "[..]ΙΛΕΩΣ, ΒΑΣΙΛΕΩΣ, 1", "[– – –]ΩΣ, ΒΑΣΙΛΕΩΣ, 0", "ΒΑ[– – –]ΩΣ, ΒΑΣΙΛΕΩΣ, 0",
        "[– – –]ΩΝ, ΒΑΣΙΛΕΩΣ, 1", "βασιλεως, ΒΑϹΙΛΕΩϹ, 0", "ΒΑ̣ΣΙΛ(ΕΩΣ), ΒΑΣΙΛΕΩΣ, 0", "ΒΑΣΙ{Ι}Λ⟨Ε⟩ΩΣ, ΒΑΣΙΛΕΩΣ, 0"})
    void whatIsLostFitsAnyLetter(String preserved, String whole, int apart) {
        assertEquals(OptionalInt.of(apart), apart(preserved, whole));
    }

    @Test
    void nothingIsHeldAgainstALegendThatIsNotWhole() {
        assertEquals(OptionalInt.empty(), apart("ΒΑΣ", "ΒΑ[– – –]"));
    }

    @Property(tries = 200)
    void aLegendIsNoLetterAwayFromItsRemains(@ForAll @CharRange(from = 'Α', to = 'Ρ') @StringLength(min = 3, max = 12) String whole,
                                             @ForAll int seed) {
        int from = Math.floorMod(seed, whole.length());
        String remains = whole.substring(0, from) + "[" + ".".repeat(whole.length() - from) + "]";
        assertEquals(OptionalInt.of(0), apart(remains, whole));
        assertEquals(OptionalInt.of(0), apart("[– – –]" + whole.substring(from), whole));
        assertEquals(OptionalInt.of(1), apart(whole.substring(0, from) + "Ω" + whole.substring(from + 1), whole));
    }

    private static OptionalInt apart(String preserved, String whole) {
        return Apart.letters(LegendParser.parse(preserved).legend(), LegendParser.parse(whole).legend());
    }
}
