package exergue.check.rules;

import exergue.check.CoinOfType;
import exergue.check.Rule;
import exergue.check.YearsInWords;
import exergue.dating.DatePrinter;
import exergue.dating.Dating;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Provenance;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Nobody owned a coin before it was struck, and nothing has happened to it after the book. */
public final class ProvenanceDateImpossible implements Rule {

    static final Code CODE = new Code("provenance-date-impossible", Severity.WARNING,
            "A step of a provenance is dated before the coin was struck, or after the book",
            "Such a date is a slip: a minus sign too many, digits exchanged, a wrong century. Provenances are printed in order of "
                    + "date, so that the step comes to stand in the wrong place too.",
            """
                    # catalogue.yaml says “year: '2026'”
                    provenance:
                      - {words: bought in Lampron, date: 2097}
                    """,
            """
                    provenance:
                      - {words: bought in Lampron, date: 1997}
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        OptionalInt book = catalogue.title().year().map(year -> YearsInWords.last(year.value())).orElse(OptionalInt.empty());
        List<Finding> faults = new ArrayList<>();
        for (CoinOfType pair : CoinOfType.all(catalogue)) {
            List<Provenance> steps = pair.coin().provenance();
            for (int i = 0; i < steps.size(); i++) {
                String path = "provenance[" + (i + 1) + "].date";
                steps.get(i).date().flatMap(date -> fault(date, path, pair, book, catalogue)).ifPresent(faults::add);
            }
        }
        return faults;
    }

    private static Optional<Finding> fault(Written<Dating> step, String path, CoinOfType pair, OptionalInt book, Catalogue catalogue) {
        String when = "The step is dated " + DatePrinter.print(step.value(), catalogue.style().dates());
        Optional<Written<Dating>> struck = pair.type().date();
        if (struck.isPresent() && step.value().latest().orElse(Integer.MAX_VALUE)
                < struck.get().value().earliest().orElse(Integer.MIN_VALUE)) {
            return Optional.of(Finding.of(CODE, step.place(), path, when + ", before the coin was struck ("
                            + DatePrinter.print(struck.get().value(), catalogue.style().dates()) + ").",
                    "Mend the date of the step, or that of the type “" + pair.type().id() + "”.")
                    .withRelated(struck.get().place(), "the date of the type"));
        }
        if (book.isPresent() && step.value().earliest().orElse(Integer.MIN_VALUE) > book.getAsInt()) {
            return Optional.of(Finding.of(CODE, step.place(), path, when + ", and the book is of " + book.getAsInt() + ".",
                    "Mend the date of the step, or “year” in catalogue.yaml."));
        }
        return Optional.empty();
    }
}
