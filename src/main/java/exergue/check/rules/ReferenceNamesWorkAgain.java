package exergue.check.rules;

import exergue.check.CitedNumbers;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Reference;
import exergue.model.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** "Hallam 12" as the number in a work that is printed as "Hallam". */
public final class ReferenceNamesWorkAgain implements Rule {

    static final Code CODE = new Code("reference-names-work-again", Severity.WARNING, "The number of a reference begins with the work it is of",
            "The book prints the sign of the work before every number; a number copied from a list together with the sign would have it "
                    + "twice: “Hallam Hallam 12”.",
            """
                    references:
                      - {work: hallam-1931, number: Hallam 12}
                    """,
            """
                    references:
                      - {work: hallam-1931, number: 12}
                    """);

    /** A single letter may well be of the number itself: "P 12". */
    private static final int SHORTEST = 2;

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        CitedNumbers.in(catalogue).forEach(reference -> Optional.ofNullable(catalogue.works().get(reference.work().value()))
                .flatMap(work -> fault(reference, work)).ifPresent(faults::add));
        return faults;
    }

    private static Optional<Finding> fault(Reference reference, Work work) {
        String sign = work.sign().value();
        String number = reference.number().value().strip();
        String rest = number.substring(Math.min(sign.length(), number.length()));
        if (sign.length() < SHORTEST || !number.regionMatches(true, 0, sign, 0, sign.length())
                || !rest.isEmpty() && Character.isLetterOrDigit(rest.codePointAt(0))) {
            return Optional.empty();
        }
        rest = rest.replaceFirst("^[\\s,:.]+", "");
        return Optional.of(Finding.of(CODE, reference.number().place(), "references",
                "“" + number + "” would be printed as “" + sign + " " + number + "”, since “" + reference.work() + "” is printed as “" + sign + "”.",
                rest.isEmpty() ? "Write the number within the work, or take “number” out." : "Write “" + rest + "”."));
    }
}
