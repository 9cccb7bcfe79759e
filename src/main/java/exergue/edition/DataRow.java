package exergue.edition;

import exergue.measure.Kind;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * One coin as the data files give it.
 *
 * @param metal      id of the metal, not the sign the book prints
 * @param findSpot   coarse name of the find-spot; the exact place never goes into a data file
 * @param figures    one for each kind of the house's measurement line, in its order
 * @param line       measurement line as printed
 * @param damage     words of damage
 * @param weightCounts true where the coin has a weight and it counts in statistics
 * @param page       folio of the page it stands on; empty while pages are not known
 */
public record DataRow(String id, String number, String type, String mint, Optional<String> ruler,
                      String denomination, String metal, List<Figure> figures, String line, List<String> damage,
                      boolean weightCounts, Optional<String> collection, Optional<String> findSpot,
                      Optional<String> page) {

    public DataRow {
        figures = List.copyOf(figures);
        damage = List.copyOf(damage);
    }

    /**
     * What is printed of one kind.
     *
     * @param status     "read", "missing", "not applicable", "illegible"
     * @param why        why there is no figure, in the entry's words
     * @param convention under which it stands; empty where the entry is silent
     * @param recorded   text as in the entry; empty where the entry is silent
     * @param values     exact, in the normal unit: none, one, or two for two-way figures and ranges
     * @param unit       normal unit: "g", "mm", "h"; empty without values
     * @param printed    with unit and signs, as in the line
     */
    public record Figure(Kind kind, String status, Optional<String> why, Optional<String> convention,
                         String recorded, List<BigDecimal> values, String unit, String printed) {

        public Figure {
            values = List.copyOf(values);
        }
    }
}
