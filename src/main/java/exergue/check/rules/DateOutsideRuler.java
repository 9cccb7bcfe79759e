package exergue.check.rules;

import exergue.check.Rule;
import exergue.dating.DatePrinter;
import exergue.dating.Dating;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Ruler;
import exergue.model.Type;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;

/** The date of a type and the dates of its ruler have no year in common. Common practice, no source. */
public final class DateOutsideRuler implements Rule {

    static final Code CODE = new Code("date-outside-ruler", Severity.WARNING,
            "A type is dated to years in which its ruler did not rule",
            "Coins in a ruler’s name may be later than the ruler, but a date that has no year in common with the rule is more "
                    + "often a slip: a year BC without its minus sign, or the wrong ruler.",
            """
                    # rulers.yaml says “dates: -0211/-0197”
                    date: 0205
                    """,
            """
                    date: -0204
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        for (Type type : catalogue.types()) {
            Ruler ruler = type.ruler().map(id -> catalogue.rulers().get(id.value())).orElse(null);
            if (ruler != null && ruler.dates().isPresent() && type.date().isPresent()
                    && type.date().get().value().isApartFrom(ruler.dates().get().value())) {
                faults.add(fault(type.date().get(), ruler, ruler.dates().get(), catalogue));
            }
        }
        return faults;
    }

    private static Finding fault(Written<Dating> date, Ruler ruler, Written<Dating> dates, Catalogue catalogue) {
        String when = DatePrinter.print(date.value(), catalogue.style().dates());
        String reign = DatePrinter.print(dates.value(), catalogue.style().dates());
        return Finding.of(CODE, date.place(), "date", "The date “" + date.value().edtf() + "” is " + when + ", but " + ruler.name()
                        + " is dated " + reign + ".",
                "Mend the one that is wrong; for coins struck in the ruler’s name by others, declare them as a ruler of their own.")
                .withRelated(dates.place(), "“" + dates.value().edtf() + "”, " + reign);
    }
}
