package exergue.source.list;

import exergue.finding.Place;
import exergue.model.Written;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What is said of one column.
 *
 * @param holds what its cells are
 * @param hand  who measured, and in which unit; all empty where the cells are no readings
 * @param cited the work that cells cite by number, and how it relates
 * @param text  how the text of a cell is taken
 * @param signs what stands for no figure in this column, and what it means here
 * @param place where it is written
 */
public record ListColumn(ColumnContent holds, Hand hand, Cited cited, CellText text, Map<String, Written<String>> signs, Place place) {

    public ListColumn {
        signs = Collections.unmodifiableMap(new LinkedHashMap<>(signs));
    }

    /**
     * @param unit of a figure without one
     * @param by   id of a convention
     * @param byIn heading of the column that names the convention row by row
     * @param secondIn heading of the column that has a second figure
     */
    public record Hand(Optional<Written<String>> unit, Optional<Written<String>> by, Optional<Written<String>> byIn,
                       Optional<Written<String>> secondIn) { }

    /** @param relation in the words of an entry */
    public record Cited(Optional<Written<String>> work, Written<String> relation) { }

    /**
     * @param splitAt      what stands between several values in one cell
     * @param introducedBy words before the text
     * @param words        of the list, and what they are in the catalogue
     */
    public record CellText(Optional<Written<String>> splitAt, Optional<Written<String>> introducedBy, Map<String, Written<String>> words) {
        public CellText {
            words = Collections.unmodifiableMap(new LinkedHashMap<>(words));
        }
    }

    /** A column of which nothing is said but what it holds. */
    public static ListColumn of(ColumnContent holds, Place place) {
        return new ListColumn(holds, new Hand(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()),
                new Cited(Optional.empty(), new Written<>("same type", place)),
                new CellText(Optional.empty(), Optional.empty(), Map.of()), Map.of(), place);
    }
}
