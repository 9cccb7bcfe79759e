package exergue.edition;

import exergue.edition.Specimen.Picture;
import java.math.BigDecimal;
import java.util.List;

/**
 * One plate. All measures are millimetres, ready to be printed.
 *
 * @param id      anchor
 * @param number  in roman capitals: "IV"
 * @param heading "Plate IV"
 */
public record Plate(String id, String number, String heading, List<Row> rows) {

    public Plate {
        rows = List.copyOf(rows);
    }

    /**
     * Pairs beside each other, their middles on one line.
     *
     * @param above  white above the row
     * @param height of the highest picture
     * @param cell   width of each pair's place; rows with as many places have common axes
     * @param places how many pairs there is room for; the last row of a plate may have fewer pairs
     */
    public record Row(List<Pair> pairs, BigDecimal above, BigDecimal height, BigDecimal cell, int places) {

        public Row {
            pairs = List.copyOf(pairs);
        }
    }

    /**
     * Obverse and reverse of one coin.
     *
     * @param coin   anchor of its entry
     * @param number catalogue number, printed below
     */
    public record Pair(String coin, String number, Picture picture) { }
}
