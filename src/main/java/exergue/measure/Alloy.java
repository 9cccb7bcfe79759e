package exergue.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/**
 * An alloy of two metals, for a fineness from density. Densities in g/cm³ from the CRC Handbook of Chemistry and
 * Physics (from memory).
 *
 * @param heavier name of the heavier metal
 * @param lighter name of the lighter one
 */
public record Alloy(String heavier, BigDecimal heavierDensity, String lighter, BigDecimal lighterDensity) {

    /** Where the densities of the metals come from. */
    public static final String SOURCE = "CRC Handbook of Chemistry and Physics (from memory)";

    public static final Alloy GOLD_SILVER = new Alloy("gold", new BigDecimal("19.3"), "silver", new BigDecimal("10.49"));
    public static final Alloy SILVER_COPPER = new Alloy("silver", new BigDecimal("10.49"), "copper", new BigDecimal("8.96"));

    private static final BigDecimal TWO = new BigDecimal("2");
    private static final BigDecimal HUNDRED = new BigDecimal("100");

    public static List<Alloy> all() {
        return List.of(GOLD_SILVER, SILVER_COPPER);
    }

    /** As a type names it: {@code gold-silver}. */
    public String id() {
        return heavier + "-" + lighter;
    }

    /** Share of the heavier metal by weight, 0 to 1, and the least and most that the step of the density allows. */
    public record Fineness(BigDecimal share, BigDecimal least, BigDecimal most) {

        /** "52 (51–54) per cent" */
        public String text() {
            return percent() + " per cent";
        }

        /** "52 (51–54)": never finer than whole per cents, which is all that two weighings support. */
        public String percent() {
            String range = percent(least) + "–" + percent(most);
            return percent(share) + (isSpread() ? " (" + range + ")" : "");
        }

        /** True where the least and the most are different whole per cents, so that both are printed. */
        public boolean isSpread() {
            return !percent(least).equals(percent(most));
        }

        private static String percent(BigDecimal share) {
            return share.multiply(HUNDRED).setScale(0, RoundingMode.HALF_EVEN).toPlainString();
        }
    }

    /** Share of the heavier metal by weight in an alloy of this density; below 0 or above 1 for no such alloy. */
    public BigDecimal share(BigDecimal density) {
        return heavierDensity.multiply(density.subtract(lighterDensity))
                .divide(density.multiply(heavierDensity.subtract(lighterDensity)), Ratio.CARRIED);
    }

    /**
     * The fineness that a density means, with half a step of it either way, kept between none and all.
     *
     * @return empty where no alloy of these metals is so dense or so light
     */
    public Optional<Fineness> fineness(Quantity density) {
        BigDecimal half = density.resolution().divide(TWO, Ratio.CARRIED);
        BigDecimal lightest = density.value().subtract(half);
        BigDecimal densest = density.value().add(half);
        if (lightest.compareTo(heavierDensity) > 0 || densest.compareTo(lighterDensity) < 0) {
            return Optional.empty();
        }
        return Optional.of(new Fineness(kept(density.value()), kept(lightest), kept(densest)));
    }

    private BigDecimal kept(BigDecimal density) {
        return share(density.max(lighterDensity).min(heavierDensity));
    }
}
