package exergue.check.rules;

import exergue.check.CoinOfType;
import exergue.check.Rule;
import exergue.dating.DatePrinter;
import exergue.dating.Dating;
import exergue.dating.Era;
import exergue.dating.Years;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.EraDate;
import exergue.model.Ruler;
import exergue.model.Type;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The year on a coin, converted, lies outside the dates of its ruler, and the type has no date of its own. */
public final class EraDateOutsideRuler implements Rule {

    static final Code CODE = new Code("era-date-outside-ruler", Severity.WARNING,
            "The year that stands on a coin is not in the years of its ruler",
            "Either the year is misread, or the type belongs to another ruler, or the beginning of the era is wrong. Where the type has "
                    + "a date, the year is held against that.",
            """
                    # rulers.yaml says “dates: -0289/-0269”; house-style.yaml “ardian: {sign: year, year-one: -0311}”
                    era-date: {era: ardian, year: 53}
                    """,
            """
                    era-date: {era: ardian, year: 35}
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        catalogue.types().forEach(type -> fault(type.eraDate(), type, catalogue).ifPresent(faults::add));
        CoinOfType.all(catalogue).forEach(pair -> fault(pair.coin().eraDate(), pair.type(), catalogue).ifPresent(faults::add));
        return faults;
    }

    private static Optional<Finding> fault(Optional<EraDate> onCoin, Type type, Catalogue catalogue) {
        Era era = onCoin.map(year -> catalogue.style().eras().get(year.era().value())).orElse(null);
        Ruler ruler = type.ruler().map(id -> catalogue.rulers().get(id.value())).orElse(null);
        if (era == null || ruler == null || type.date().isPresent() || ruler.dates().isEmpty()) {
            return Optional.empty();
        }
        Written<Dating> dates = ruler.dates().get();
        Years years = era.years(onCoin.get().year().value());
        if (dates.value().earliest().orElse(Integer.MIN_VALUE) <= years.last()
                && years.first() <= dates.value().latest().orElse(Integer.MAX_VALUE)) {
            return Optional.empty();
        }
        String year = DatePrinter.print(era, onCoin.get().year().value(), catalogue.style().dates());
        String reign = DatePrinter.print(dates.value(), catalogue.style().dates());
        return Optional.of(Finding.of(CODE, onCoin.get().year().place(), "era-date.year",
                "The coin says " + year + ", but " + ruler.name() + " is dated " + reign + ".",
                "Mend the year, the ruler of the type, or “year-one” of the era in house-style.yaml.")
                .withRelated(dates.place(), "“" + dates.value().edtf() + "”, " + reign));
    }
}
