package exergue.dating;

/**
 * The Hijri calendar by its tables: eleven leap years in thirty, counted from Friday, 16 July 622 (Julian), the civil
 * epoch. The months on the ground followed the moon as it was seen, and may differ by a day or two; years hardly ever.
 */
final class Hijri {

    private static final int EPOCH = 1948439;
    private static final int DAYS = 354;

    /** 15 October 1582, the first day of the Gregorian calendar. */
    private static final int GREGORIAN = 2299161;

    private Hijri() { }

    /** The years its first and last day fall in. */
    static Years years(int year) {
        return new Years(christianYear(firstDay(year)), christianYear(firstDay(year + 1) - 1));
    }

    /** Julian day number of the first of Muharram. */
    static int firstDay(int year) {
        return 1 + DAYS * (year - 1) + Math.floorDiv(3 + 11 * year, 30) + EPOCH;
    }

    /** Richards's algorithm (Explanatory Supplement to the Astronomical Almanac, 3rd ed. 2013, 15.11; from memory). */
    static int christianYear(int day) {
        int f = day + 1401;
        if (day >= GREGORIAN) {
            f += (4 * day + 274277) / 146097 * 3 / 4 - 38;
        }
        int e = 4 * f + 3;
        int h = 5 * (e % 1461 / 4) + 2;
        int month = (h / 153 + 2) % 12 + 1;
        return e / 1461 - 4716 + (14 - month) / 12;
    }
}
