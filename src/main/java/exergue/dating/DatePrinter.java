package exergue.dating;

import exergue.dating.Dating.End;
import exergue.dating.Dating.End.Without;

/** A dating in the words of the house. */
public final class DatePrinter {

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
        DateLanguage language = style.language();
        if (!(span.from() instanceof End.At from)) {
            return language.until(date(((End.At) span.to()).date()), span.from() == Without.OPEN);
        }
        if (!(span.to() instanceof End.At to)) {
            return language.from(date(from.date()), span.to() == Without.OPEN);
        }
        if (from.date().qualification() != to.date().qualification()) {
            return language.fromTo(date(from.date()), date(to.date()));
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
        String month = style.language().month(date.month().getAsInt());
        return (date.day().isPresent() ? style.language().dayOf(date.day().getAsInt(), month) : month) + " " + year;
    }
}
