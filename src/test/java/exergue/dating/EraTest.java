package exergue.dating;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Years of eras and the years BC and AD they fall in. */
class EraTest {

    private static final Era HIJRI = new Era("ah", "AH", new Era.Lunar());

    @ParameterizedTest
    @CsvSource({
        // AH 1 begins 16 July 622 Julian, AH 77 begins 10 April 696 Julian; AH 656 lies wholly in 1258
        "1, AH 1 (AD 622/3)", "77, AH 77 (AD 696/7)", "656, AH 656 (1258)", "1445, AH 1445 (2023/4)"})
    void yearsOfTheHijra(int year, String printed) {
        assertEquals(printed, DatePrinter.print(HIJRI, year, DateStyle.DEFAULT));
    }

    @ParameterizedTest
    @CsvSource({"1, 1948440", "2, 1948794", "3, 1949149", "31, 1959071"})
    void firstDaysByTheTabularFormula(int year, int day) {
        // day + ceil(29.5 (m - 1)) + 354 (y - 1) + floor((3 + 11 y) / 30) + 1948439, worked by hand
        assertEquals(day, Hijri.firstDay(year));
    }

    @ParameterizedTest
    @CsvSource({"1948440, 622", "0, -4712", "2299160, 1582", "2299161, 1582", "2451545, 2000", "2451544, 1999", "1721424, 1", "1721423, 0"})
    void yearsOfJulianDaysFromMemory(int day, int year) {
        // 2451545 is 1 January 2000 (noon), 2299161 is 15 October 1582, 1721424 is 1 January AD 1 Julian
        assertEquals(year, Hijri.christianYear(day));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"35 | true | year 35 (278/7 BC)", "35 | false | year 35 (278 BC)", "1 | true | year 1 (312/1 BC)",
        "312 | true | year 312 (1 BC/AD 1)", "311 | true | year 311 (2/1 BC)", "43 | true | year 43 (270/69 BC)", "313 | true | year 313 (AD 1/2)",
        "13 | true | year 13 (300/299 BC)"})
    void yearsOfAnEraThatBeganIn312(int year, boolean straddling, String printed) {
        // invented era; 312 BC is -311
        Era era = new Era("ardian", "year", new Era.Counted(-311, straddling));
        assertEquals(printed, DatePrinter.print(era, year, DateStyle.DEFAULT));
    }

    @Property
    void lunarYearsFollowEachOtherWithoutGap(@ForAll @IntRange(min = 1, max = Era.LAST_YEAR - 1) int year) {
        Years one = HIJRI.years(year);
        Years next = HIJRI.years(year + 1);
        int length = Hijri.firstDay(year + 1) - Hijri.firstDay(year);
        assertEquals(true, (length == 354 || length == 355) && next.first() - one.last() >= 0 && next.first() - one.last() <= 1);
    }
}
