package exergue.edition;

import exergue.dating.DatePrinter;
import exergue.dating.Dating;
import exergue.dating.Era;
import exergue.model.EraDate;
import exergue.model.HouseStyle;
import exergue.model.Written;

/** Dates as the house prints them. */
record DateWords(HouseStyle style) {

    String of(Written<Dating> date) {
        return DatePrinter.print(date.value(), style.dates());
    }

    /** "year 35 (278/7 BC)"; an era that nobody has declared shows its id. */
    String of(EraDate date) {
        Era era = style.eras().get(date.era().value());
        int year = date.year().value();
        return era == null ? date.era().value() + " " + year : DatePrinter.print(era, year, style.dates());
    }
}
