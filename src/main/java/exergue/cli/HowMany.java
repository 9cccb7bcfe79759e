package exergue.cli;

import exergue.edition.methods.english.Grammar;
import exergue.finding.Findings;
import exergue.finding.Severity;

/** Counts in words: "0 errors, 1 warning". */
final class HowMany {

    private HowMany() { }

    /** Errors and warnings always, notes and what is excused where there are some. */
    static String of(Findings findings) {
        long notes = findings.count(Severity.NOTE);
        int excused = findings.excused().size();
        return count(findings.count(Severity.ERROR), "error") + ", " + count(findings.count(Severity.WARNING), "warning")
                + (notes == 0 ? "" : ", " + count(notes, "note")) + (excused == 0 ? "" : ", " + excused + " excused");
    }

    static String count(long number, String singular) {
        return number + " " + Grammar.agree(number, singular);
    }
}
