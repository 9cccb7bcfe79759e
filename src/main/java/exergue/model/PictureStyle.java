package exergue.model;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * How photographs of coins are printed.
 *
 * @param ground   what becomes of that on which the coins were photographed
 * @param colours  whether they are kept
 * @param scale    of every coin for which nothing else is said
 * @param small    what small coins are enlarged to; empty if the house enlarges none
 * @param scaleBar millimetres drawn at the foot of every plate; 0 for none
 */
public record PictureStyle(Ground ground, Colours colours, PrintScale scale, Optional<Enlarged> small, int scaleBar) {

    public static final PictureStyle DEFAULT =
            new PictureStyle(Ground.CUT_OUT, Colours.AS_PHOTOGRAPHED, PrintScale.LIFE, Optional.empty(), 0);

    /** @param below diameter in mm; coins that are smaller are printed at this scale */
    public record Enlarged(BigDecimal below, PrintScale scale) { }

    /** The coin alone on white, or the picture with whatever is around the coin. */
    public enum Ground {
        CUT_OUT("cut out"), AS_PHOTOGRAPHED("as photographed");

        private final String words;

        Ground(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public enum Colours {
        AS_PHOTOGRAPHED("as photographed"), GREY("grey");

        private final String words;

        Colours(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
