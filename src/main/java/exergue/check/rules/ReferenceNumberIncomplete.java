package exergue.check.rules;

import exergue.check.CitedNumbers;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Reference;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** "pl." or "p." with nothing after it. */
public final class ReferenceNumberIncomplete implements Rule {

    static final Code CODE = new Code("reference-number-incomplete", Severity.WARNING, "A reference names a plate or page without its number",
            "Notes are often taken with the number left for later. The book would print the word alone, and nobody can look it up.",
            """
                    references:
                      - {work: hallam-1931, number: "12, pl."}
                    """,
            """
                    references:
                      - {work: hallam-1931, number: "12, pl. IV, 3"}
                    """);

    private static final Pattern WORD_ALONE = Pattern.compile("(?iu)(?<![\\p{L}\\p{N}])(pp?|pls?|plates?|nos?|figs?|vols?|taf|tav|abb|nr|n[°º]|bd|lots?|cols?)"
            + "\\.?\\s*(?=[,;:)]|$)");

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
        String number = reference.number().value();
        Matcher alone = WORD_ALONE.matcher(number);
        return alone.find() && !isLetterOfANumber(number, alone) ? Optional.of(Finding.of(CODE, reference.number().place(), "references",
                "In “" + number + "” of “" + reference.work() + "” nothing stands after “" + alone.group().strip() + "”.",
                "Write the number of the plate or page, or take the word out.")) : Optional.empty();
    }

    /** "12 P" is how some collections count; a single letter is a word for pages only with its full stop. */
    private static boolean isLetterOfANumber(String number, Matcher alone) {
        return alone.group(1).length() == 1 && !number.startsWith(".", alone.end(1));
    }
}
