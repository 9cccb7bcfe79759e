package exergue.edition;

import exergue.measure.Kind;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * One coin as the data files give it.
 *
 * @param metal      id of the metal, not the sign the book prints
 * @param struck     when, and with which legends
 * @param findSpot   coarse name of the find-spot; the exact place never goes into a data file
 * @param figures    one for each kind that the house prints, in its order
 * @param fineness   what its density means, as printed: "52 (51–54) per cent gold"
 * @param others     figures of other hands that are not the ones printed, in the order of the entry
 * @param line       measurement line as printed
 * @param damage     words of damage
 * @param weightCounts true where the coin has a weight and it counts in statistics
 * @param page       folio of the page it stands on; empty while pages are not known
 */
public record DataRow(String id, String number, String type, String mint, Optional<String> ruler,
                      String denomination, String metal, Struck struck, List<Figure> figures,
                      Optional<String> fineness, List<Other> others, String line, List<String> damage,
                      boolean weightCounts, Optional<String> collection, Optional<String> findSpot,
                      Optional<String> page) {

    public DataRow {
        figures = List.copyOf(figures);
        others = List.copyOf(others);
        damage = List.copyOf(damage);
    }

    /**
     * What the dies say, and when they were used: the coin's own where it differs from its type, else the type's.
     *
     * @param eraDate        year of an era that stands on the coin, as printed
     * @param obverseLegend  as printed
     */
    public record Struck(Optional<Dated> date, Optional<String> eraDate, Optional<String> obverseLegend,
                         Optional<String> reverseLegend) { }

    /** @param edtf the date as recorded; @param printed as in the book */
    public record Dated(String edtf, String printed) { }

    /**
     * Another hand's figure.
     *
     * @param convention under which it stands
     * @param values     exact, in the normal unit: one, or two for two-way figures and ranges
     */
    public record Other(String convention, Kind kind, String recorded, List<BigDecimal> values, String unit) {

        public Other {
            values = List.copyOf(values);
        }
    }

    /**
     * What is printed of one kind.
     *
     * @param status     "read", "missing", "not applicable", "illegible", or "not given" for what few coins have
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
