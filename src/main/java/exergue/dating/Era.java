package exergue.dating;

/**
 * A way of counting years that coins themselves use.
 *
 * @param sign printed before the year: "AH", "year"
 */
public record Era(String id, String sign, Reckoning reckoning) {

    /** How years are counted. */
    public sealed interface Reckoning { }

    /**
     * Solar years from a first one.
     *
     * @param firstYear  in which year 1 began, as EDTF counts
     * @param straddling whether its new year lies within the year, so that each of its years falls in two
     */
    public record Counted(int firstYear, boolean straddling) implements Reckoning { }

    /** The Islamic lunar years, in the civil tabular form, {@link Hijri}. */
    public record Lunar() implements Reckoning { }

    /** Greatest year that is counted. */
    public static final int LAST_YEAR = 9999;

    /**
     * The year or years it falls in; Julian before 15 October 1582.
     *
     * @param year 1 to {@link #LAST_YEAR}
     */
    public Years years(int year) {
        if (reckoning instanceof Counted counted) {
            int first = counted.firstYear() + year - 1;
            return new Years(first, counted.straddling() ? first + 1 : first);
        }
        return Hijri.years(year);
    }
}
