package exergue.dating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The examples of the Extended Date/Time Format specification, Library of Congress, 2019 (from memory). */
class EdtfTest {

    private static Dating dating(String edtf) {
        return assertInstanceOf(Parsed.Accepted.class, DatingParser.parse(edtf), edtf).dating();
    }

    private static Parsed.Refused refused(String text) {
        return assertInstanceOf(Parsed.Refused.class, DatingParser.parse(text), text);
    }

    @ParameterizedTest
    @CsvSource({
        // level 0: dates and intervals
        "1985-04-12, 1985, 1985", "1985-04, 1985, 1985", "1985, 1985, 1985", "1964/2008, 1964, 2008",
        "2004-06/2006-08, 2004, 2006", "2004-02-01/2005-02-08, 2004, 2005", "2004-02-01/2005-02, 2004, 2005",
        "2004-02-01/2005, 2004, 2005", "2005/2006-02, 2005, 2006",
        // level 1: long years, seasons, qualification of the whole, unspecified digits from the right, extended intervals
        "Y170000002, 170000002, 170000002", "Y-170000002, -170000002, -170000002", "2001-21, 2001, 2001", "1984?, 1984, 1984",
        "2004-06~, 2004, 2004", "2004-06-11%, 2004, 2004", "201X, 2010, 2019", "20XX, 2000, 2099", "2004-XX, 2004, 2004",
        "1985-04-XX, 1985, 1985", "1985-XX-XX, 1985, 1985", "1985-04-12/.., 1985,", "1985-04/.., 1985,", "1985/.., 1985,",
        "../1985-04-12, , 1985", "../1985-04, , 1985", "../1985, , 1985", "1985-04-12/, 1985,", "1985-04/, 1985,", "1985/, 1985,",
        "/1985-04-12, , 1985", "/1985-04, , 1985", "/1985, , 1985", "-1985, -1985, -1985",
        // level 2: sub-year groupings, qualification of components, unspecified digits anywhere, intervals of these
        "2001-34, 2001, 2001", "2004-06-11%, 2004, 2004", "2004-06~-11, 2004, 2004", "2004?-06-11, 2004, 2004",
        "?2004-06-~11, 2004, 2004", "2004-%06-11, 2004, 2004", "156X-12-25, 1560, 1569", "15XX-12-25, 1500, 1599",
        "1XXX-XX, 1000, 1999", "1XXX-12, 1000, 1999", "1984-1X, 1984, 1984", "2004-06-~01/2004-06-~20, 2004, 2004",
        "2004-06-XX/2004-07-03, 2004, 2004"})
    void itsExamplesAreRead(String edtf, Integer earliest, Integer latest) {
        Dating dating = dating(edtf);
        assertEquals(edtf, dating.edtf());
        assertEquals(earliest == null ? OptionalInt.empty() : OptionalInt.of(earliest), dating.earliest());
        assertEquals(latest == null ? OptionalInt.empty() : OptionalInt.of(latest), dating.latest());
        assertTrue(edtf.matches(DatingParser.FORM), "the pattern of the schema");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "1985-04-12T23:20:30Z | NOT_TAKEN", "Y-17E7 | NOT_TAKEN", "1950S2 | NOT_TAKEN", "Y171010000S3 | NOT_TAKEN",
        "Y3388E2S3 | NOT_TAKEN", "[1667,1668, 1670..1672] | NOT_TAKEN", "[..1760-12-03] | NOT_TAKEN", "{1960,1961-12} | NOT_TAKEN",
        "XXXX-12-XX | SAYS_NOTHING", "../.. | SAYS_NOTHING", "/ | SAYS_NOTHING"})
    void itsExamplesThatNoCoinNeedsAreRefused(String edtf, DatingFault fault) {
        assertEquals(fault, refused(edtf).fault());
    }

    @Test
    void theYearsOfTheCenturiesBeforeChrist() {
        // 1 BC is 0000, 100 BC is -0099: ISO 8601, astronomical counting of years
        assertEquals(List.of("1 BC", "100 BC", "second century BC", "130–121 BC", "AD 100–199"),
                Stream.of("0000", "-0099", "-01XX", "-012X", "01XX").map(e -> DatePrinter.print(dating(e), DateStyle.DEFAULT)).toList());
    }

    @ParameterizedTest
    @CsvSource({"1984?, UNCERTAIN", "2004-06~, APPROXIMATE", "2004-06-11%, BOTH", "?2004-06-~11, BOTH", "1984, NONE", "2004-~06, APPROXIMATE"})
    void qualifications(String edtf, Qualification qualification) {
        assertEquals(qualification, ((Dating.Once) dating(edtf)).date().qualification());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "0117-13 | OUT_OF_RANGE | 5 | 2", "0117-00 | OUT_OF_RANGE | 5 | 2", "0117-20 | OUT_OF_RANGE | 5 | 2", "0117-42 | OUT_OF_RANGE | 5 | 2",
        "0117-02-30 | OUT_OF_RANGE | 8 | 2", "0117-04-31 | OUT_OF_RANGE | 8 | 2", "0117-21-01 | OUT_OF_RANGE | 8 | 2",
        "-0000 | OUT_OF_RANGE | 0 | 5", "-0119/0117-13 | OUT_OF_RANGE | 11 | 2",
        "-0109/-0119 | BACKWARDS | 0 | 11", "0117-05/0117-04 | BACKWARDS | 0 | 15",
        "-120 | YEAR_DIGITS | 0 | 4", "-0119/-110~ | YEAR_DIGITS | 6 | 5", "0 | YEAR_DIGITS | 0 | 1", "12345 | YEAR_DIGITS | 0 | 5",
        "c. 120 BC | NOT_EDTF | 0 | 9", "'' | NOT_EDTF | 0 | 0", "nonsense | NOT_EDTF | 0 | 8", "1/2/3 | YEAR_DIGITS | 0 | 1"})
    void faultsStandAtTheirCharacters(String text, DatingFault fault, int offset, int length) {
        Parsed.Refused refused = refused(text);
        assertEquals(fault + " " + offset + " " + length, refused.fault() + " " + refused.offset() + " " + refused.length());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0117-12", "0117-24", "0117-02-29", "0000", "-0001", "-0119/0117-12", "-01XX/-0099"})
    void whatIsJustInsideTheLimitsIsTaken(String edtf) {
        dating(edtf);
    }

    @Test
    void anEditIsOfferedOnlyWhereOneThingCanBeMeant() {
        assertEquals("-0119~/-0109~", refused("c. 120–110 BC").edit().orElseThrow());
        assertEquals("-0119/-0109", refused("-0109/-0119").edit().orElseThrow());
        assertTrue(refused("120–10 BC").edit().isEmpty() && refused("120–10 BC").remedy().contains("-0119/-0009"));
        assertTrue(refused("c. 212–208").edit().isEmpty());
        assertEquals("Write -0211~/-0207~ if that is BC.", refused("c. 212–208").remedy());
    }

    @Test
    void datesAreSortedByTheirYears() {
        List<String> sorted = Stream.of("0117", "-0119/..", "-01XX", "../-0200", "-0119/-0109", "0001").map(EdtfTest::dating)
                .sorted(Dating.BY_DATE).map(Dating::edtf).toList();
        assertEquals(List.of("../-0200", "-01XX", "-0119/-0109", "-0119/..", "0001", "0117"), sorted);
    }

    @Test
    void datesApart() {
        assertTrue(dating("-0119").isApartFrom(dating("0119")));
        assertFalse(dating("-0119/-0109").isApartFrom(dating("-0109/-0099")));
        assertFalse(dating("-0119/..").isApartFrom(dating("0119")));
        assertTrue(dating("../-0120").isApartFrom(dating("-0119")));
    }

    @Provide
    Arbitrary<String> datelike() {
        return Arbitraries.of("-", "–", "/", "..", "~", "?", "%", "X", "0", "1", "12", "0117", "Y", "T", "E", "S", " ", "c. ", "BC", " AD",
                "second", " century", "half of ", "from ", " to ", "[", "{", "é", "\uD800\uDD98").list().ofMaxSize(12)
                .map(parts -> String.join("", parts));
    }

    @Property
    void noTextBreaksTheParser(@ForAll("datelike") String text) {
        Parsed parsed = DatingParser.parse(text);
        if (parsed instanceof Parsed.Refused refused) {
            assertTrue(refused.offset() >= 0 && refused.offset() + refused.length() <= text.codePointCount(0, text.length()), text);
            refused.edit().ifPresent(edit -> dating(edit));
        } else {
            assertTrue(text.matches(DatingParser.FORM), text);
            assertFalse(DatePrinter.print(dating(text), DateStyle.DEFAULT).matches("(.*[^0-9])?0( .*)?"), text);
        }
    }

    @Property
    void noTextAtAllBreaksTheParser(@ForAll String text) {
        DatingParser.parse(text);
    }
}
