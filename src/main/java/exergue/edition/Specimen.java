package exergue.edition;

import exergue.measure.Kind;
import exergue.model.Inline;
import exergue.model.Prose;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One coin as printed.
 *
 * @param id         of the coin; also its anchor
 * @param number     catalogue number
 * @param cells      measurement line, member by member, in the house's order
 * @param line       the same in one string: "3.87 g, 18 mm, 6 h"
 * @param dies       "O1/R3", empty if not known
 * @param whereabouts collection or find, with number
 * @param remarks    damage, what differs from the type, find, references to this coin, provenance: finished sentences
 * @param notes      prose
 * @param picture    photographs to print, if there are any
 * @param plate      where the plates show it: "pl. IV"; empty where they do not
 * @param alone      what is printed where the coin has an entry of its own
 */
public record Specimen(String id, String number, List<Cell> cells, String line, String dies, String whereabouts,
                       List<Inline> remarks, List<Prose> notes, Optional<Picture> picture, String plate,
                       Alone alone) {

    public Specimen {
        cells = List.copyOf(cells);
        remarks = List.copyOf(remarks);
        notes = List.copyOf(notes);
    }

    /** Whereabouts and remarks as one run of finished sentences: all that follows the dies in a row. */
    public List<Inline> text() {
        return Remarks.withWhereabouts(whereabouts, remarks);
    }

    /**
     * One member of the measurement line.
     *
     * @param figure   "3.87", "18 × 17", or the house's mark where there is none
     * @param unit     "g"; empty where there is no figure
     * @param space    between them
     * @param sign     house signs after it, empty mostly
     * @param after    separator to the next member, empty after the last
     */
    public record Cell(Kind kind, String figure, String unit, String space, String sign, String after) {

        /** The member as it stands in the line, without its separator: {@code 3.87 g†}. */
        public String text() {
            return figure + (unit.isEmpty() ? "" : space + unit) + sign;
        }
    }

    /**
     * Photographs of the coin.
     *
     * @param toScale whether they show it as large as its scale says
     * @param scale   printed beside it where it is not that of the book's other coins: "2:1"; else empty
     */
    public record Picture(Optional<Face> obverse, Optional<Face> reverse, Optional<String> credit, boolean toScale,
                          String scale) {

        /** Those that there are, the obverse first. */
        public List<Face> faces() {
            return Stream.concat(obverse.stream(), reverse.stream()).toList();
        }

        /** Of all its sides without any gap, in mm. */
        public BigDecimal width() {
            return faces().stream().map(Face::width).reduce(BigDecimal.ZERO, BigDecimal::add);
        }

        /** Of the higher of its sides, in mm. */
        public BigDecimal height() {
            return faces().stream().map(Face::height).reduce(BigDecimal.ZERO, BigDecimal::max);
        }
    }

    /**
     * One side of the coin.
     *
     * @param path        of what is printed
     * @param file        that the entry names
     * @param alternative for a reader who cannot see it
     * @param width       as printed, in mm
     * @param height      as printed, in mm
     * @param shape       outline of a coin that is cut out, places in per cent of width and height; else empty
     */
    public record Face(String path, String file, String alternative, BigDecimal width, BigDecimal height, String shape) { }
}
