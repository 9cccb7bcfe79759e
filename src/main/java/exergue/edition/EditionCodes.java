package exergue.edition;

import exergue.finding.Code;
import exergue.finding.Severity;
import java.util.List;

/** What the making of the book can find. */
public final class EditionCodes {

    static final Code UNKNOWN_COUNTER = new Code("unknown-counter", Severity.ERROR,
            "A count in braces is not one that the tool makes",
            "In chapters/methods.md a name in braces, such as {coins}, is printed as a count taken from the data. A "
                    + "name that stands for no count would be printed as it stands, braces and all.",
            "I measured {coin of bench} myself.",
            "I measured {coins of bench} coins myself.");

    static final Code COUNT_CONTRADICTED = new Code("count-contradicted", Severity.WARNING,
            "A count in the author’s methods text contradicts the data",
            "The statement of how the coins were measured is written from the data. Where the author’s own sentence "
                    + "names a convention by its title and gives another count for it, the reader is told two things.",
            "The 43 coins of measurements at the bench were weighed twice.",
            "The {coins of bench} coins of measurements at the bench were weighed twice.");

    static final Code COUNT_NOT_BORNE_OUT = new Code("count-not-borne-out", Severity.NOTE,
            "A count in the author’s methods text is none of those taken from the data",
            "A count typed by hand stays as it is when coins are added. It may be right, but nothing in the data says "
                    + "so; a count in braces is always true.",
            "This catalogue describes 118 coins.",
            "This catalogue describes {coins} coins.");

    public static final Code SEE_LEADS_NOWHERE = new Code("see-leads-nowhere", Severity.WARNING,
            "A see-reference leads to an entry that no index has",
            "A reader who follows it finds nothing. Entries of the indexes are the names of mints, rulers, find-spots and "
                    + "collections, legends, keywords of types, countermarks, and what provenances stand under.",
            "see:\n  - {from: crane, to: herons}",
            "see:\n  - {from: crane, to: heron}");

    private EditionCodes() { }

    public static List<Code> all() {
        return List.of(UNKNOWN_COUNTER, COUNT_CONTRADICTED, COUNT_NOT_BORNE_OUT, SEE_LEADS_NOWHERE);
    }
}
