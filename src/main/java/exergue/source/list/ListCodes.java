package exergue.source.list;

import static exergue.finding.Severity.ERROR;
import static exergue.finding.Severity.NOTE;
import static exergue.finding.Severity.WARNING;

import exergue.finding.Code;
import java.util.List;

/** What can be wrong with a list that is entered, or with the file that says how it is read. */
public final class ListCodes {

    public static final Code NOT_A_TABLE = new Code("list-not-a-table", ERROR, "A list is not a table that can be read",
            "A list is a text file with a row of headings and a row for each coin, as a spreadsheet saves it as CSV.",
            "\"Inv.;Weight", "Inv.;Weight\n17;3.87");
    public static final Code ENCODING = new Code("list-encoding", ERROR, "The encoding of a list is not known or not the one named",
            "Read in a wrong encoding, names and legends get wrong letters, and nobody sees it until they are in print.",
            "encoding: utf-8  # of a list saved as Windows-1252", "encoding: windows-1252");
    public static final Code ENCODING_TAKEN = new Code("list-encoding-taken", WARNING, "A list is taken to be Windows-1252",
            "Every text can be read as Windows-1252, but what was saved in another old encoding comes out with wrong letters. So look at "
                    + "the word that is quoted.",
            "# a list with the word M?nze, and nothing said of its encoding", "encoding: windows-1252");
    public static final Code TOO_LARGE = new Code("list-too-large", ERROR, "A list is too large",
            "Lists of coins have some thousand rows. A file much larger is nearly always something else.",
            "photographs.zip, 80 MB", "coins.csv, 80 kB");
    public static final Code HEADING_NOT_THERE = new Code("list-heading-not-there", ERROR, "A heading that is named is not in the list",
            "Without its column, every figure or word that was to come from it would be missing.",
            "columns: {Wieght: weight}", "columns: {Weight: weight}");
    public static final Code COLUMN_UNCLAIMED = new Code("list-column-unclaimed", WARNING, "A column of the list goes nowhere",
            "What stands in it gets into no entry. Nothing is guessed and nothing is dropped without a word.",
            "columns: {Wt: weight}  # and a column Remarks", "columns: {Wt: weight, Remarks: note}");
    public static final Code SIGN_UNANSWERED = new Code("list-sign-unanswered", ERROR, "It is not said what a sign without a figure means",
            "An empty cell, a dash or a question mark can mean that nobody weighed the coin, that there is nothing to measure or that the "
                    + "record cannot be read. To a reader of the book these are three different things.",
            "# a dash under the heading Axis, and no answer", "signs: {'-': 'missing: not recorded by the Museum'}");
    public static final Code UNKNOWN_WORD = new Code("list-unknown-word", ERROR, "A word of the list is not known in the catalogue",
            "The catalogue knows mints, types, collections and find-spots by the names you have given them; the list has names of its own.",
            "columns: {Material: metal}  # with AR in its cells", "columns:\n  Material: {holds: metal, words: {AR: silver}}");
    public static final Code TYPE_UNCLEAR = new Code("list-type-unclear", ERROR, "It is not clear which type a coin of the list is of",
            "Every coin belongs to one type. What the row says fits no type of the catalogue, or several.",
            "# Lampron, Drachm; the catalogue has two such types", "columns: {Our type: type}");
    public static final Code NO_ID = new Code("list-row-without-id", ERROR, "A row has nothing from which to make the coin’s id",
            "The id is the name under which the coin is found for good. It must come from something in the row that stays.",
            "Inv.;Weight\n;3.87", "Inv.;Weight\n17;3.87");
    public static final Code COIN_TWICE = new Code("list-coin-twice", ERROR, "Two rows of the list are one coin, or one row two",
            "One coin is one entry. Of two rows nobody can say which is right.",
            "Inv.;Weight\n17;3.87\n17;3.88", "Inv.;Weight\n17;3.87\n18;3.88");
    public static final Code LIKE_A_SUM = new Code("list-row-like-a-sum", ERROR, "A row looks like a sum, not like a coin",
            "Spreadsheets end with sums and means. Entered as a coin, one would be the heaviest in the book.",
            "Total;1549.20", "rows-left-out: [Total]");
    public static final Code BEYOND_HEADINGS = new Code("list-cell-without-heading", ERROR, "A row has more cells than there are headings",
            "Mostly a cell has the sign in it that parts the cells, and everything after it has slipped one column on.",
            "Inv.,Weight\n17,3,87", "Inv.,Weight\n17,\"3,87\"");
    public static final Code DIFFERS = new Code("list-differs-from-entry", WARNING, "The list says otherwise than the entry",
            "The entry is never changed by a list. One of the two is a slip, or somebody has learnt something since.",
            "# the list: 3.78, the entry: weight: 3.87 g", "# the list: 3.87, the entry: weight: 3.87 g");
    public static final Code SAYS_MORE = new Code("list-says-more", NOTE, "The list says something that the entry does not",
            "The coin is in the catalogue already, and its entry is never changed by a list, but for figures when you ask for them.",
            "# the list has a provenance, the entry has none", "provenance: [Tessimond cabinet]");
    public static final Code NOT_CHANGED = new Code("list-figures-not-added", ERROR, "Figures of the list cannot be added to an entry",
            "The entry is laid out so that a line cannot be put in without touching what is there.",
            "also-measured: [{by: bench, weight: 3.87 g}]", "also-measured:\n  - {by: bench, weight: 3.87 g}");
    public static final Code EXACT_PLACE = new Code("list-exact-place", ERROR, "A list would write the exact place of a find into an entry",
            "Exact find-spots invite looting. They are held back where find-spots.yaml has them, but not in a note or a provenance, which are "
                    + "printed.",
            "# Remarks: found below the third spring", "# Remarks: found in 1931");
    public static final Code PLAN = new Code("list-file-incomplete", ERROR, "The file of a list leaves something open",
            "Whose the figures are, what the ids are made of and which work is cited must be said once for the whole list.",
            "columns: {Wt: weight}", "by: bench\ncolumns: {Wt: weight}");

    private ListCodes() { }

    public static List<Code> all() {
        return List.of(NOT_A_TABLE, ENCODING, ENCODING_TAKEN, TOO_LARGE, HEADING_NOT_THERE, COLUMN_UNCLAIMED, SIGN_UNANSWERED,
                UNKNOWN_WORD, TYPE_UNCLEAR, NO_ID, COIN_TWICE, LIKE_A_SUM, BEYOND_HEADINGS, DIFFERS, SAYS_MORE, NOT_CHANGED, EXACT_PLACE, PLAN);
    }
}
