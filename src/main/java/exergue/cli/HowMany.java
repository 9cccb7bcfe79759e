package exergue.cli;

import exergue.edition.methods.english.Grammar;
import exergue.finding.Findings;
import exergue.finding.Severity;

/** Counts in words: "0 errors, 1 warning". */
final class HowMany {

    private HowMany() { }

    /** Errors and warnings always, notes where there are some. */
    static String of(Findings findings) {
        long notes = findings.count(Severity.NOTE);
        return count(findings.count(Severity.ERROR), "error") + ", " + count(findings.count(Severity.WARNING), "warning")
                + (notes == 0 ? "" : ", " + count(notes, "note"));
    }

    static String count(long number, String singular) {
        return number + " " + Grammar.agree(number, singular);
    }
}
