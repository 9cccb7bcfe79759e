package exergue.study.match;

import exergue.finding.Code;
import exergue.finding.Severity;
import java.util.List;

/** What can be wrong with a sheet of fresh measurements. */
public final class SheetCodes {

    public static final Code NOT_A_TABLE = new Code("sheet-not-a-table", Severity.ERROR,
            "A sheet of measurements is not a table that can be read",
            "A sheet is a text file with a line of headings and a line for each coin, its cells parted by commas, semicolons "
                    + "or tabs. Without the headings nobody can say which figure is the weight.",
            "1,3.87,18", "label,weight,diameter\n1,3.87 g,18 mm");

    public static final Code UNKNOWN_COLUMN = new Code("sheet-unknown-column", Severity.WARNING,
            "A sheet of measurements has a column that is not read",
            "Only the columns label, ticket, weight, diameter and axis are read. A heading with a slip in it would leave out "
                    + "all of its figures.",
            "label,wieght", "label,weight");

    public static final Code UNKNOWN_TICKET = new Code("sheet-unknown-ticket", Severity.WARNING,
            "A ticket names a coin that the catalogue has not",
            "A ticket counts for the coin it names, and shows which tickets were changed round. One that names nothing is as "
                    + "good as lost.",
            "label,ticket,weight\n1,lk-0o42,3.87 g", "label,ticket,weight\n1,lk-0042,3.87 g");

    public static final Code NO_FIGURE = new Code("sheet-row-without-figure", Severity.WARNING,
            "A coin on a sheet of measurements has no figure",
            "A coin that was not measured cannot be recognised.",
            "label,weight\n1,", "label,weight\n1,3.87 g");

    public static final Code LABEL_TWICE = new Code("sheet-label-twice", Severity.WARNING,
            "Two coins on a sheet of measurements have one label",
            "The answer names coins by their labels; with two alike you cannot tell which coin is meant.",
            "label,weight\n1,3.87 g\n1,4.02 g", "label,weight\n1,3.87 g\n2,4.02 g");

    private SheetCodes() { }

    public static List<Code> all() {
        return List.of(NOT_A_TABLE, UNKNOWN_COLUMN, UNKNOWN_TICKET, NO_FIGURE, LABEL_TWICE);
    }
}
