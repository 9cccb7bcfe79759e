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
 * @param caption whose coins it shows, by their numbers: "Arkeneia 16–31, Phormantis 40"
 * @param below   white between its last row and what stands at its foot
 */
public record Plate(String id, String number, String heading, String caption, List<Row> rows, BigDecimal below) {

    public Plate {
        rows = List.copyOf(rows);
    }

    /** Its pairs in order. */
    public List<Pair> pairs() {
        return rows.stream().flatMap(row -> row.pairs().stream()).toList();
    }

    /**
     * Pairs beside each other, their middles on one line.
     *
     * @param above  white above the row
     * @param height of the highest picture
     * @param cell   width of each pair's place; rows with as many places have common axes
     * @param places how many pairs there is room for; the last row of the plates may have fewer pairs
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
    public record Pair(String coin, String number, Picture picture) {

        /** The fixed small gap between obverse and reverse. */
        public static final BigDecimal GAP = new BigDecimal("1.5");

        BigDecimal width() {
            return picture.faces().size() > 1 ? picture.width().add(GAP) : picture.width();
        }

        BigDecimal height() {
            return picture.height();
        }
    }
}
