package exergue.cite;

import static exergue.finding.Severity.ERROR;

import exergue.finding.Code;
import java.util.List;

/** What can be wrong with a citation style. */
public final class CiteCodes {

    public static final Code NOT_A_STYLE = new Code("not-a-citation-style", ERROR, "The file is not a citation style",
            "A citation style is a file in the Citation Style Language, CSL 1.0. It says in what order author, year and title "
                    + "of a work are set, and in what type. A style that only refers to another one, or that has no list of "
                    + "works, cannot set the works cited.",
            "citation-style: styles/notes.docx.csl", "citation-style: styles/journal.csl");

    public static final Code STYLE_REFUSED = new Code("citation-style-refused", ERROR, "The citation style is refused",
            "A style may come from anybody. One that would read other files, or that would never come to an end, is not run.",
            "<!DOCTYPE style [<!ENTITY secret SYSTEM \"file:///home/me/letters.txt\">]>", "<style xmlns=\"http://purl.org/net/xbiblio/csl\">");

    private CiteCodes() { }

    public static List<Code> all() {
        return List.of(NOT_A_STYLE, STYLE_REFUSED);
    }
}
