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

    public static final Code UNKNOWN_SUBJECT = new Code("unknown-subject", Severity.ERROR,
            "A block of figures shows something that cannot be shown",
            "After “show:” stands one of the subjects for which tables and charts are made. Anything else would leave a gap in the chapter.",
            "show: weight\nof: drachms", "show: weights\nof: drachms");

    public static final Code UNKNOWN_FORM = new Code("unknown-form", Severity.ERROR,
            "A block of figures asks for a form that its subject does not have",
            "After “as:” stands the form of the table or chart; each subject has forms of its own.",
            "show: weights\nof: drachms\nas: rose", "show: weights\nof: drachms\nas: histogram");

    public static final Code UNKNOWN_GROUP = new Code("unknown-group", Severity.ERROR,
            "A chapter names a group of coins that is not declared",
            "Groups are declared in catalogue.yaml, so that every chapter means the same coins by a name.",
            "{mean weight of drachm}", "{mean weight of drachms}");

    public static final Code UNKNOWN_FIGURE = new Code("unknown-figure", Severity.ERROR,
            "A chapter asks for a figure that cannot be reckoned",
            "A figure in braces, such as {mean weight of drachms}, is reckoned from the coins at every typesetting. A name that stands "
                    + "for no figure would leave a gap in the sentence.",
            "{average weight of drachms}", "{mean weight of drachms}");

    public static final Code DIVIDED_GROUP = new Code("divided-group", Severity.ERROR,
            "A single figure is asked of a group that is divided",
            "A group that says “by” is several groups side by side. It can be shown in a table or chart, but has no single mean.",
            "{mean weight of by-mint}", "{mean weight of drachms}");

    public static final Code STEPS_NOT_READ = new Code("steps-not-read", Severity.ERROR,
            "The steps of a block of figures are not understood",
            "Steps are one figure with its unit. Without it nobody could say whether 5 means grams or hundredths.",
            "show: weights\nof: drachms\nas: frequencies\nsteps: five",
            "show: weights\nof: drachms\nas: frequencies\nsteps: 0.05 g");

    public static final Code NOTHING_TO_SHOW = new Code("nothing-to-show", Severity.WARNING,
            "A block of figures has nothing to show",
            "None of the coins has a figure of this kind that counts, so the block is left out of the book.",
            "show: weights\nof: lost-coins", "show: weights\nof: drachms");

    public static final Code TOO_MANY_GROUPS = new Code("too-many-groups", Severity.ERROR,
            "A chart is asked for of more groups than have room in it",
            "A histogram has a panel for each group, a scatter a mark, and no more of them than can be told apart on a page.",
            "show: weights\nof: every-type\nas: histogram", "show: weights\nof: drachms, obols\nas: histogram");

    public static final Code CAPTION_OF_OTHER_KIND = new Code("caption-of-other-kind", Severity.ERROR,
            "A caption calls a table a figure, or a chart a table",
            "Tables and figures are numbered apart, so the number would stand in the wrong list.",
            "Table: Weights of the drachms.\n\n(a block of figures with “as: histogram”)",
            "Figure: Weights of the drachms.\n\n(a block of figures with “as: histogram”)");

    private EditionCodes() { }

    public static List<Code> all() {
        return List.of(UNKNOWN_COUNTER, COUNT_CONTRADICTED, COUNT_NOT_BORNE_OUT, SEE_LEADS_NOWHERE, UNKNOWN_SUBJECT, UNKNOWN_FORM,
                UNKNOWN_GROUP, UNKNOWN_FIGURE, DIVIDED_GROUP, STEPS_NOT_READ, NOTHING_TO_SHOW, TOO_MANY_GROUPS, CAPTION_OF_OTHER_KIND);
    }
}
