package exergue.check.rules;

import exergue.check.Rule;
import exergue.dating.DatePrinter;
import exergue.dating.Dating;
import exergue.dating.Era;
import exergue.dating.Years;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.EraDate;
import exergue.model.Type;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The year on a coin, converted, lies outside the date of its type. Common practice, no source. */
public final class EraDateDisagrees implements Rule {

    static final Code CODE = new Code("era-date-disagrees", Severity.WARNING,
            "The year that stands on a coin is not in the years its type is dated to",
            "The book prints both, one beside the other. Either the date, the year, or the beginning of the era is wrong.",
            """
                    # house-style.yaml says “ardian: {sign: year, year-one: -0311}”: year 35 is 278/7 BC
                    date: -0249/-0239
                    era-date: {era: ardian, year: 35}
                    """,
            """
                    date: -0277/-0276
                    era-date: {era: ardian, year: 35}
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        Map<String, Optional<Written<Dating>>> dates = new HashMap<>();
        for (Type type : catalogue.types()) {
            dates.put(type.id().value(), type.date());
            fault(type.eraDate(), type.date(), catalogue).ifPresent(faults::add);
        }
        for (Coin coin : catalogue.coins()) {
            fault(coin.eraDate(), dates.getOrDefault(coin.type().value(), Optional.empty()), catalogue).ifPresent(faults::add);
        }
        return faults;
    }

    private static Optional<Finding> fault(Optional<EraDate> onCoin, Optional<Written<Dating>> date, Catalogue catalogue) {
        Era era = onCoin.map(year -> catalogue.style().eras().get(year.era().value())).orElse(null);
        if (era == null || date.isEmpty() || meets(date.get().value(), era.years(onCoin.get().year().value()))) {
            return Optional.empty();
        }
        String year = DatePrinter.print(era, onCoin.get().year().value(), catalogue.style().dates());
        String when = DatePrinter.print(date.get().value(), catalogue.style().dates());
        return Optional.of(Finding.of(CODE, onCoin.get().year().place(), "era-date.year",
                "The coin says " + year + ", but the type is dated " + when + ".",
                "Mend “date”, “era-date”, or “year-one” of the era in house-style.yaml.")
                .withRelated(date.get().place(), "“" + date.get().value().edtf() + "”, " + when));
    }

    private static boolean meets(Dating date, Years years) {
        return date.earliest().orElse(Integer.MIN_VALUE) <= years.last() && years.first() <= date.latest().orElse(Integer.MAX_VALUE);
    }
}
