package exergue.dating;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One date in EDTF, without its span: {@code -0119~}, {@code -01XX}, {@code 0117-08-11}, {@code ?2004-06-~11}.
 *
 * @param text  as written
 * @param parts matched against the form of a date
 */
record DateText(String text, Matcher parts) {

    private static final String SIGN = "[?~%]?";

    /** For the JSON Schema too, hence without named groups. */
    static final String FORM = SIGN + "(?:Y-?[1-9][0-9]{4,8}|-?[0-9X]{4})" + SIGN
            + "(?:-" + SIGN + "[0-9X]{2}" + SIGN + "(?:-" + SIGN + "[0-9X]{2}" + SIGN + ")?)?";

    private static final Pattern PARTS = Pattern.compile("(" + SIGN + ")(?:Y(-?[1-9][0-9]{4,8})|(-?[0-9X]{4}))(" + SIGN + ")"
            + "(?:-(" + SIGN + ")([0-9X]{2})(" + SIGN + ")(?:-(" + SIGN + ")([0-9X]{2})(" + SIGN + "))?)?");

    private static final int LONG_YEAR = 2;
    private static final int YEAR = 3;
    private static final int MONTH = 6;
    private static final int DAY = 9;
    private static final int LAST_GROUPING = 41;
    private static final int FIRST_GROUPING = 21;

    /** Empty where the text has not the form of a date. */
    static Optional<DateText> of(String text) {
        Matcher parts = PARTS.matcher(text);
        return parts.matches() ? Optional.of(new DateText(text, parts)) : Optional.empty();
    }

    /** The first part that cannot be: no year at all, minus nought, a 13th month, a 30th of February. */
    Optional<Misfit> misfit() {
        String year = parts.group(YEAR);
        if (year != null && year.replace("-", "").equals("XXXX")) {
            return Optional.of(misfit(DatingFault.SAYS_NOTHING, YEAR, "has no year",
                    "Leave the date out, or write as much of the year as is known: -01XX is the second century BC."));
        }
        if ("-0000".equals(year)) {
            return Optional.of(misfit(DatingFault.OUT_OF_RANGE, YEAR, "is no year",
                    "Write 0000 for 1 BC, or -0001 for 2 BC."));
        }
        OptionalInt month = number(MONTH);
        if (month.isPresent() && !isMonth(month.getAsInt()) && !isGrouping(month.getAsInt())) {
            return Optional.of(misfit(DatingFault.OUT_OF_RANGE, MONTH, "is no month",
                    "Write 01 to 12 for a month, or 21 to 24 for spring, summer, autumn and winter."));
        }
        OptionalInt day = number(DAY);
        boolean ofMonth = month.isEmpty() || isMonth(month.getAsInt());
        if (day.isPresent() && (!ofMonth || day.getAsInt() < 1 || day.getAsInt() > longest(month))) {
            return Optional.of(misfit(DatingFault.OUT_OF_RANGE, DAY, "is no day of that month",
                    ofMonth ? "Write 01 to " + longest(month) + "." : "Leave the day out: a season has none."));
        }
        return Optional.empty();
    }

    /** @param offset in the text of this date */
    record Misfit(DatingFault fault, int offset, int length, String what, String remedy) { }

    private Misfit misfit(DatingFault fault, int group, String what, String remedy) {
        return new Misfit(fault, parts.start(group), parts.group(group).length(), "“" + parts.group(group) + "” " + what + ".",
                remedy);
    }

    /** What it says; only where nothing is amiss. A day or month with unspecified digits is as good as none. */
    CalendarDate date() {
        StringBuilder signs = new StringBuilder();
        for (int group : new int[] {1, 4, 5, 7, 8, 10}) {
            signs.append(parts.group(group) == null ? "" : parts.group(group));
        }
        OptionalInt month = number(MONTH);
        return new CalendarDate(years(), month, month.isPresent() ? number(DAY) : OptionalInt.empty(),
                Qualification.ofSigns(signs.toString()));
    }

    private Years years() {
        if (parts.group(LONG_YEAR) != null) {
            int year = Integer.parseInt(parts.group(LONG_YEAR));
            return new Years(year, year);
        }
        String year = parts.group(YEAR);
        int low = Integer.parseInt(year.replace('X', '0'));
        int high = Integer.parseInt(year.replace('X', '9'));
        return new Years(Math.min(low, high), Math.max(low, high));
    }

    private OptionalInt number(int group) {
        String digits = parts.group(group);
        return digits == null || digits.contains("X") ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(digits));
    }

    private static boolean isMonth(int month) {
        return month >= 1 && month <= 12;
    }

    private static boolean isGrouping(int month) {
        return month >= FIRST_GROUPING && month <= LAST_GROUPING;
    }

    /** February has 29 here in every year: whether a year BC was a leap year is not for a reader of entries to say. */
    private static int longest(OptionalInt month) {
        return switch (month.orElse(1)) {
            case 2 -> 29;
            case 4, 6, 9, 11 -> 30;
            default -> 31;
        };
    }
}
