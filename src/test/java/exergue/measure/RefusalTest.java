package exergue.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Texts that give no reading: why, where exactly, and what is offered. Places count code points of the text as written. */
class RefusalTest {

    @ParameterizedTest(name = "{0} {1} [{2}]: {3} at {4}+{5}, offers {6}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', ignoreLeadingAndTrailingWhitespace = false, value = {
            "WEIGHT|59.7 gr||GR_NOT_SAID|5|2|g or grains", "WEIGHT|59.7 gr.||GR_NOT_SAID|5|3|g or grains",
            "WEIGHT|  59.7 gr||GR_NOT_SAID|7|2|grains", "WEIGHT|2 dwt 11 gr|gr=grammes|PARTS_DO_NOT_ADD|0|11|2 dwt 11 gr",
            "WEIGHT|1 oz 11 gr||OUNCE_NOT_SAID|2|2|oz t", "WEIGHT|2 dr.||DRAM_NOT_SAID|2|3|dr ap", "WEIGHT|2 drachms||DRAM_NOT_SAID|2|7|dr av",
            "WEIGHT|3,87 g||OTHER_DECIMAL_MARK|0|4|3.87",
            "WEIGHT|3.87 g|comma|OTHER_DECIMAL_MARK|0|4|3,87", "WEIGHT|1,234 g||THOUSANDS_MARK|0|5|1234 or 1.234",
            "WEIGHT|1.234 g|comma|THOUSANDS_MARK|0|5|1234 or 1,234", "WEIGHT|1,234.5 g||THOUSANDS_MARK|0|7|1234.5",
            "WEIGHT|0,234 g||OTHER_DECIMAL_MARK|0|5|0.234",
            "WEIGHT|3.O7 g||LETTER_FOR_FIGURE|0|4|3.07", "WEIGHT|l8 g||LETTER_FOR_FIGURE|0|2|18",
            "WEIGHT|c. ３.87 g||OTHER_DIGITS|3|1|3", "WEIGHT|٣ g||OTHER_DIGITS|0|1|3",
            "WEIGHT|3.87 €||UNKNOWN_SIGN|5|1|", "WEIGHT|3.87 \uD83E\uDE99 g||UNKNOWN_SIGN|5|1|",
            "WEIGHT|3.87 gx||UNKNOWN_UNIT|5|2|grains", "WEIGHT|3.87||NO_UNIT|0|4|(g)", "WEIGHT|18 mm||UNIT_OF_ANOTHER_KIND|3|2|",
            "WEIGHT|0.00 g||NOT_POSITIVE|0|4|missing:", "WEIGHT|-3 g||NOT_POSITIVE|0|4|minus",
            "WEIGHT|1 234 g||NOT_A_READING|0|5|without a space", "WEIGHT|18 x 17 g||ONE_FIGURE_ONLY|0|9|also-measured",
            "WEIGHT|2½ dwt 11 grains||PARTS_DO_NOT_ADD|0|2|last part", "WEIGHT|1 gros 2 dwt||PARTS_DO_NOT_ADD|0|12|one system",
            "WEIGHT|c. 3.9 g?||TWO_QUALIFIERS|0|9|Keep", "WEIGHT|1/0 g||IMPOSSIBLE_FRACTION|0|3|",
            "WEIGHT|1.5/2 g||IMPOSSIBLE_FRACTION|0|5|", "WEIGHT|3.870000000000 g||TOO_MANY_DIGITS|0|14|",
            "WEIGHT|?||UNCLEAR_ABSENCE|0|1|illegible", "WEIGHT|missing||NO_REASON|0|7|missing: ", "WEIGHT|missing: ||NO_REASON|0|9|",
            "WEIGHT|Not applicable : ?||NO_REASON|0|18|", "WEIGHT|   ||EMPTY_READING|0|3|",
            "WEIGHT|6:30 g||NOT_A_READING|0|4|6:30",
            "DIAMETER|18 g||UNIT_OF_ANOTHER_KIND|3|1|mm", "DIAMETER|18 oz||UNIT_OF_ANOTHER_KIND|3|2|mm",
            "DIAMETER|size 5||NO_SIZE_SCALE|0|6|head-1887", "DIAMETER|Mionnet 5|unit=sixteenth-inch|NO_SIZE_SCALE|0|9|",
            "DIAMETER|19-17 mm||RANGE_BACKWARDS|0|8|smaller", "DIAMETER|18/17 mm||IMPOSSIBLE_FRACTION|0|5|18 x 17",
            "DIAMETER|2 m||UNKNOWN_UNIT|2|1|mm", "DIAMETER|3000 mm||BEYOND_ANY_COIN|0|4|",
            "THICKNESS|2 x 3 mm||ONE_FIGURE_ONLY|0|8|one figure", "AXIS|5-6 h||ONE_FIGURE_ONLY|0|5|5½ h",
            "AXIS|6||NO_UNIT|0|1|h or °", "AXIS|13 h||HOUR_BEYOND_TWELVE|0|2|1 to 12", "AXIS|6.30 h||HOURS_OR_MINUTES|0|4|6:30",
            "AXIS|↓↓||ARROWS_UNCLEAR|0|2|↑↓", "AXIS|↓⬇\uFE0F||ARROWS_UNCLEAR|0|2|", "AXIS|6:75||NOT_A_READING|0|4|6:30",
            "AXIS|6:30°||NOT_A_READING|0|4|195°", "AXIS|18 mm||UNIT_OF_ANOTHER_KIND|3|2|hours"})
    void refused(Kind kind, String text, String convention, ReadingFault fault, int offset, int length, String offers) {
        Remark remark = Hints.refusal(kind, text, convention);
        assertEquals(fault, remark.fault(), remark.what());
        assertEquals(offset + "+" + length, remark.offset() + "+" + remark.length(), remark.what());
        assertTrue(offers == null || remark.remedy().contains(offers), remark.remedy());
    }

    @Test
    void theMessageOfGrOffersBothValues() {
        assertEquals("“gr” can mean grains or grammes, and the convention “a convention for tests” does not say which: "
                + "59.7 g if grammes, 3.87 g if grains.", Hints.refusal(Kind.WEIGHT, "59.7 gr", "").what());
    }

    @Test
    void grIsReadBothWaysForWhoeverKnowsTheType() {
        GrAmbiguity both = GrAmbiguity.in("59.7 gr", Convention.UNDECLARED).orElseThrow();
        assertEquals("3.868494927", both.ifGrains().first().value().toPlainString());
        assertEquals("59.7", both.ifGrammes().first().value().toPlainString());
        assertEquals(Optional.empty(), GrAmbiguity.in("59.7 g", Convention.UNDECLARED));
        assertEquals(Optional.empty(), GrAmbiguity.in("59.7 gr", Hints.convention("gr=grains")));
        assertEquals(Optional.empty(), GrAmbiguity.in("?", Convention.UNDECLARED));
    }

    @Test
    void reasonsAreKeptAsWritten() {
        assertEquals(new Reading.Missing("Missing : too worn; 3.87 g in 1894 – not trusted", "too worn; 3.87 g in 1894 – not trusted"),
                accepted("Missing : too worn; 3.87 g in 1894 – not trusted"));
        assertEquals(new Reading.NotApplicable("not applicable: “uniface”", "“uniface”"), accepted("not applicable: “uniface”"));
        assertEquals(new Reading.Illegible("illegible: ticket torn", "ticket torn"), accepted("illegible: ticket torn"));
    }

    private static Reading accepted(String text) {
        return ((Parsed.Accepted) ReadingParser.parse(Kind.AXIS, text, Convention.UNDECLARED)).reading();
    }

    @Test
    void aHalfHourIsRemarkedUnlessItsConventionReadsHalves() {
        Convention plain = Convention.UNDECLARED;
        Convention halves = new Convention("halves", "halves", plain.by(), plain.when(), plain.work(), plain.weighing(), plain.sizing(),
                new Convention.Turning(Convention.AxisNotation.HOURS, false, Optional.of(new BigDecimal("0.5"))), false, plain.cleaning());
        assertEquals(1, ((Parsed.Accepted) ReadingParser.parse(Kind.AXIS, "6½ h", plain)).remarks().size());
        assertEquals(0, ((Parsed.Accepted) ReadingParser.parse(Kind.AXIS, "6½ h", halves)).remarks().size());
    }

    @Test
    void aMessageNeverCarriesControlCharacters() {
        String what = Hints.refusal(Kind.WEIGHT, "3.87 \u0007\u202E g", "").what();
        assertTrue(what.codePoints().noneMatch(Character::isISOControl), what);
    }
}
