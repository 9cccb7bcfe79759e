package exergue.source.list;

import exergue.finding.Place;
import exergue.model.Written;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How one list is read: the file beside it.
 *
 * @param layout       of the list as a file
 * @param by           the convention of its figures
 * @param decimalComma whether its figures have a decimal comma; empty where they have the mark of their convention
 * @param ids          pattern of the ids of new coins: "tm-{inventory number}"
 * @param everyRow     what counts for every coin of the list, where its row says nothing else
 * @param signs        what stands for no figure, and what it means; the sign "empty" is an empty cell
 * @param columns      by heading, in the order of the file
 * @param place        of the whole file
 */
public record ListPlan(Layout layout, Optional<Written<String>> by, Optional<Written<Boolean>> decimalComma, Optional<Written<String>> ids,
                       Map<String, Written<String>> everyRow, Map<String, Written<String>> signs, Map<String, ListColumn> columns,
                       Place place) {

    /** The sign of an empty cell. */
    public static final String EMPTY = "empty";
    /** The answer that a cell with this sign says nothing. */
    public static final String LEFT_OUT = ColumnContent.LEFT_OUT.word();
    /** The answer that a cell with this sign repeats the one above. */
    public static final String AS_ABOVE = "as above";

    public ListPlan {
        everyRow = Collections.unmodifiableMap(new LinkedHashMap<>(everyRow));
        signs = Collections.unmodifiableMap(new LinkedHashMap<>(signs));
        columns = Collections.unmodifiableMap(new LinkedHashMap<>(columns));
    }

    /**
     * @param encoding    name of it
     * @param mark        between cells
     * @param headingsRow row of the sheet, from 1
     * @param rowsLeftOut how rows begin that are no coins
     */
    public record Layout(Optional<Written<String>> encoding, Optional<Written<Character>> mark, Optional<Written<Integer>> headingsRow,
                         List<Written<String>> rowsLeftOut) {
        public Layout {
            rowsLeftOut = List.copyOf(rowsLeftOut);
        }
    }
}
