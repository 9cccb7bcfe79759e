package exergue.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Each fault's own examples: the faulty text has exactly that fault, the mended one has none. */
class ReadingFaultTest {

    @ParameterizedTest
    @EnumSource
    void theFaultyTextHasThisFaultAlone(ReadingFault fault) {
        assertEquals(List.of(fault), faults(fault.faulty(), fault));
        assertEquals(fault.refused(), parsed(fault.faulty(), fault) instanceof Parsed.Refused);
    }

    @ParameterizedTest
    @EnumSource
    void theMendedTextHasNone(ReadingFault fault) {
        assertEquals(List.of(), faults(fault.mended(), fault));
    }

    @Test
    void idsAreTheirOwn() {
        Set<String> seen = new HashSet<>();
        for (ReadingFault fault : ReadingFault.values()) {
            assertTrue(seen.add(fault.id()), fault.id());
            assertTrue(fault.id().matches("[a-z]+(-[a-z]+)*"), fault.id());
            assertNotEquals('.', fault.title().charAt(fault.title().length() - 1));
        }
    }

    private static List<ReadingFault> faults(String line, ReadingFault fault) {
        Parsed parsed = parsed(line, fault);
        return parsed instanceof Parsed.Refused refused ? List.of(refused.remark().fault())
                : ((Parsed.Accepted) parsed).remarks().stream().map(Remark::fault).toList();
    }

    private static Parsed parsed(String line, ReadingFault fault) {
        String[] halves = line.split(": ", 2);
        String text = halves[1].startsWith("\"") ? halves[1].substring(1, halves[1].length() - 1) : halves[1];
        return ReadingParser.parse(Kind.valueOf(halves[0].toUpperCase(Locale.ROOT)), text, Hints.convention(under(fault)));
    }

    /** What the convention of the example has to say for the fault to be possible. */
    private static String under(ReadingFault fault) {
        return switch (fault) {
            case SIZE_NOT_IN_TABLE -> "scale=mionnet-1805";
            case FINER_THAN_INSTRUMENT -> "step=0.1";
            default -> "";
        };
    }
}
