package exergue.dating;

import exergue.dating.Dating.End;
import exergue.dating.Dating.End.Without;
import java.util.List;

/** A dating in the words of the house. */
public final class DatePrinter {

    private static final List<String> MONTHS = List.of("January", "February", "March", "April", "May", "June", "July",
            "August", "September", "October", "November", "December");

    /** EDTF's groupings of months from 21 on: seasons without and with a hemisphere, quarters, thirds, halves. */
    private static final List<String> GROUPINGS = List.of("spring", "summer", "autumn", "winter",
            "spring", "summer", "autumn", "winter", "spring", "summer", "autumn", "winter",
            "first quarter of", "second quarter of", "third quarter of", "last quarter of",
            "first third of", "second third of", "last third of", "first half of", "second half of");

    private static final int FIRST_GROUPING = 21;

    private final DateStyle style;
    private final YearPrinter years;

    private DatePrinter(DateStyle style, boolean bare) {
        this.style = style;
        this.years = new YearPrinter(style, bare);
    }

    /** "c. 120–110 BC", "12 BC–AD 5", "second century BC", "from 120 BC". */
    public static String print(Dating dating, DateStyle style) {
        int first = dating.earliest().orElseGet(() -> dating.latest().orElse(0));
        DatePrinter printer = new DatePrinter(style, first >= style.bareFrom());
        return dating instanceof Dating.Once once ? printer.date(once.date()) : printer.span((Dating.Span) dating);
    }

    /** A year of an era as it stands on a coin, and when that was: "AH 77 (AD 696/7)". */
    public static String print(Era era, int year, DateStyle style) {
        Years fallsIn = era.years(year);
        return era.sign() + " " + year + " ("
                + new YearPrinter(style, fallsIn.first() >= style.bareFrom()).straddled(fallsIn) + ")";
    }

    private String span(Dating.Span span) {
        if (!(span.from() instanceof End.At from)) {
            String until = "until " + date(((End.At) span.to()).date());
            return span.from() == Without.OPEN ? until : until + ", beginning unknown";
        }
        if (!(span.to() instanceof End.At to)) {
            String since = "from " + date(from.date());
            return span.to() == Without.OPEN ? since : since + ", end unknown";
        }
        if (from.date().qualification() != to.date().qualification()) {
            return "from " + date(from.date()) + " to " + date(to.date());
        }
        boolean wholeYears = from.date().month().isEmpty() && to.date().month().isEmpty();
        String words = wholeYears
                ? years.years(new Years(from.date().years().first(), to.date().years().last()))
                : unqualified(from.date()) + " – " + unqualified(to.date());
        return qualified(words, from.date().qualification());
    }

    private String date(CalendarDate date) {
        return qualified(unqualified(date), date.qualification());
    }

    private String qualified(String words, Qualification qualification) {
        return (qualification.approximate() ? style.circa() + " " : "") + words
                + (qualification.uncertain() ? style.uncertain() : "");
    }

    private String unqualified(CalendarDate date) {
        String year = years.years(date.years());
        if (date.month().isEmpty()) {
            return year;
        }
        int month = date.month().getAsInt();
        String word = month < FIRST_GROUPING ? MONTHS.get(month - 1) : GROUPINGS.get(month - FIRST_GROUPING);
        return (date.day().isPresent() ? date.day().getAsInt() + " " : "") + word + " " + year;
    }
}
