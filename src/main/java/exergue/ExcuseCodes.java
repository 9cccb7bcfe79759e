package exergue;

import exergue.finding.Code;
import exergue.finding.Severity;
import java.util.List;

/** What can be wrong with what the house style and the entries say of findings. */
final class ExcuseCodes {

    static final Code UNKNOWN_FINDING = new Code("unknown-finding", Severity.ERROR, "No finding has this code",
            "A misspelt code in the house style or in an excuse would have no effect, without a word.",
            """
            findings:
              photograph-without-permision: error
            """, """
            findings:
              photograph-without-permission: error
            """);

    static final Code ERROR_STAYS = new Code("error-stays-error", Severity.WARNING, "What is an error by itself cannot be made less",
            "With such an error the file cannot be understood, or something that the book must print is not there or not certain. "
                    + "No book can be made over it, so neither the house style nor an entry can wave it through.",
            """
            findings:
              unknown-type: warning
            """, """
            findings:
              type-without-coins: off
            """);

    static final Code EXCUSE_WITHOUT_CAUSE = new Code("excuse-without-cause", Severity.WARNING,
            "What is excused is not found",
            "The fault has been mended, or the excuse names the wrong code. An excuse that stays behind would cover the next fault "
                    + "of this kind, which nobody has looked at.",
            """
            excused:
              - {finding: reading-not-given, because: the coin is lost}   # and all readings are there
            """, """
            # leave “excused” out
            """);

    private ExcuseCodes() { }

    static List<Code> all() {
        return List.of(UNKNOWN_FINDING, ERROR_STAYS, EXCUSE_WITHOUT_CAUSE);
    }
}
