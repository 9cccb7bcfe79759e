package exergue.cli;

import exergue.finding.Findings;
import exergue.finding.Severity;

/** Counts in words: "0 errors, 1 warning". */
final class Tally {

    private Tally() { }

    /** Errors and warnings always, notes where there are some. */
    static String of(Findings findings) {
        long notes = findings.count(Severity.NOTE);
        return count(findings.count(Severity.ERROR), "error") + ", " + count(findings.count(Severity.WARNING), "warning")
                + (notes == 0 ? "" : ", " + count(notes, "note"));
    }

    static String count(long number, String singular) {
        String plural = singular.endsWith("y") ? singular.substring(0, singular.length() - 1) + "ies" : singular + "s";
        return number + " " + (number == 1 ? singular : plural);
    }
}
