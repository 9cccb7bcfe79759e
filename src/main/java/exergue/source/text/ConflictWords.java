package exergue.source.text;

import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.finding.Severity;
import exergue.source.text.Conflict.Region;
import exergue.source.text.Conflict.Which;
import java.util.List;

/** What is said of a merge that was not finished, where no more is known of the file than its lines. */
public final class ConflictWords {

    public static final Code MERGE_CONFLICT = new Code("merge-conflict", Severity.ERROR, "A merge was not finished",
            "Git could not tell which of two changes to keep and has left both in the file, between lines of < and >. Until "
                    + "somebody chooses, nobody knows what the entry says, and it is read as if it were empty.",
            "<<<<<<< HEAD\nweight: 3.78 g\n=======\nweight: 3.87 g\n>>>>>>> editor", "weight: 3.87 g");

    private static final String CHOOSE = "Keep the text that is right, and delete the other and the lines with <<<<<<<, ======= "
            + "and >>>>>>>.";
    private static final int SHOWN = 60;

    private ConflictWords() { }

    public static List<Code> all() {
        return List.of(MERGE_CONFLICT);
    }

    /** One finding for each region. */
    static List<Finding> byLines(Conflict conflict) {
        return conflict.regions().stream().map(region -> at(conflict, region, label(region, Which.UPPER) + " has "
                + quoted(conflict.words(region, Which.UPPER)) + " here, " + label(region, Which.LOWER) + " has "
                + quoted(conflict.words(region, Which.LOWER)) + ".", CHOOSE)).toList();
    }

    /** A finding at the first mark of a region. */
    public static Finding at(Conflict conflict, Region region, String what, String remedy) {
        return Finding.of(MERGE_CONFLICT, line(conflict, region.upper()), "", what, remedy)
                .withRelated(line(conflict, region.lower()), "end of the two texts");
    }

    /** A finding for each mark that was left behind. */
    public static List<Finding> strays(Conflict conflict) {
        return conflict.strays().stream().map(line -> Finding.of(MERGE_CONFLICT, line(conflict, line), "",
                "This line, “" + conflict.text().line(line).strip() + "”, is a mark that a merge has left behind.",
                "Delete it, and see that every key stands in the file only once.")).toList();
    }

    private static Place line(Conflict conflict, int line) {
        return new Place(conflict.text().file(), line, 1, conflict.text().restOfLine(line, 1));
    }

    /** What Git calls a side, or where its text stands. */
    public static String label(Region region, Which which) {
        String label = which == Which.UPPER ? region.upperLabel() : region.lowerLabel();
        return label.isEmpty() ? which == Which.UPPER ? "The upper side" : "the lower side" : "“" + label + "”";
    }

    private static String quoted(String words) {
        if (words.isEmpty()) {
            return "nothing";
        }
        int end = words.codePointCount(0, words.length()) > SHOWN ? words.offsetByCodePoints(0, SHOWN) : words.length();
        return "“" + words.substring(0, end) + (end < words.length() ? " …" : "") + "”";
    }
}
