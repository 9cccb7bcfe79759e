package exergue.check.rules;

import exergue.check.Rule;
import exergue.dating.DatePrinter;
import exergue.dating.Dating;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Mint;
import exergue.model.Type;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;

/** The date of a type and the years in which its mint worked have no year in common. Common practice, no source. */
public final class DateOutsideMint implements Rule {

    static final Code CODE = new Code("date-outside-mint", Severity.WARNING,
            "A type is dated to years in which its mint did not work",
            "Where a mint is known to have opened or closed, a type of it with a date that has no year in common with its work is "
                    + "dated wrongly, or is of another mint; or the mint worked longer than was thought, which is worth a sentence.",
            """
                    # mints.yaml says “dates: -0349~/-0264”
                    date: -0259
                    """,
            """
                    date: -0295
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        for (Type type : catalogue.types()) {
            Mint mint = catalogue.mints().get(type.mint().value());
            if (mint != null && mint.dates().isPresent() && type.date().isPresent()
                    && type.date().get().value().isApartFrom(mint.dates().get().value())) {
                faults.add(fault(type.date().get(), mint, mint.dates().get(), catalogue));
            }
        }
        return faults;
    }

    private static Finding fault(Written<Dating> date, Mint mint, Written<Dating> dates, Catalogue catalogue) {
        String when = DatePrinter.print(date.value(), catalogue.style().dates());
        String years = DatePrinter.print(dates.value(), catalogue.style().dates());
        return Finding.of(CODE, date.place(), "date", "The date “" + date.value().edtf() + "” is " + when + ", but the mint "
                        + mint.name() + " is said to have worked " + years + ".",
                "Mend the one that is wrong: the date or the mint of the type, or “dates” of the mint in mints.yaml.")
                .withRelated(dates.place(), "“" + dates.value().edtf() + "”, " + years);
    }
}
