package exergue.check.rules;

import exergue.check.CitedNumbers;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Reference;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Pages or numbers from a greater to a smaller one. */
public final class ReferenceRangeBackwards implements Rule {

    static final Code CODE = new Code("reference-range-backwards", Severity.WARNING, "The pages or numbers of a reference run backwards",
            "A range runs from the smaller number to the greater. One that does not has its ends exchanged, or a digit is a slip; a "
                    + "reader cannot look it up.",
            """
                    references:
                      - {work: hallam-1931, number: pp. 214–198}
                    """,
            """
                    references:
                      - {work: hallam-1931, number: pp. 198–214}
                    """);

    /** A hyphen divides a number from a smaller one of its kind, as in 12-3; only after the word for pages or numbers is it a range. */
    private static final Pattern RANGE = Pattern.compile("(?<![\\p{L}\\p{N}])([0-9]{1,9})\\s?–\\s?([0-9]{1,9})(?![\\p{L}\\p{N}])"
            + "|(?iu)(?<!\\p{L})(?:pp|pls|nos|nrn|figs|ss|taff|tavv)\\.?\\s?([0-9]{1,9})\\s?-\\s?([0-9]{1,9})(?![\\p{L}\\p{N}])");

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        CitedNumbers.in(catalogue).forEach(reference -> fault(reference).ifPresent(faults::add));
        return faults;
    }

    private static Optional<Finding> fault(Reference reference) {
        Matcher range = RANGE.matcher(reference.number().value());
        while (range.find()) {
            String from = range.group(1) == null ? range.group(3) : range.group(1);
            String to = range.group(1) == null ? range.group(4) : range.group(2);
            if (isBackwards(from, to)) {
                return Optional.of(Finding.of(CODE, reference.number().place(), "references", "“" + reference.number() + "” in “"
                        + reference.work() + "” goes from " + from + " back to " + to + ".", "Mend the number that is wrong."));
            }
        }
        return Optional.empty();
    }

    /** 214–18 means 214 to 218, and 214–12 would mean 212. */
    private static boolean isBackwards(String from, String to) {
        String end = to.length() < from.length() ? from.substring(0, from.length() - to.length()) + to : to;
        return new BigInteger(end).compareTo(new BigInteger(from)) < 0;
    }
}
