package exergue.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * An alloy of two metals, for a fineness from density. Densities in g/cm³ from the CRC Handbook of Chemistry and
 * Physics (from memory).
 */
public record Alloy(String heavier, BigDecimal heavierDensity, String lighter, BigDecimal lighterDensity) {

    public static final Alloy GOLD_SILVER = new Alloy("gold", new BigDecimal("19.3"), "silver", new BigDecimal("10.49"));
    public static final Alloy SILVER_COPPER = new Alloy("silver", new BigDecimal("10.49"), "copper", new BigDecimal("8.96"));

    private static final BigDecimal TWO = new BigDecimal("2");
    private static final BigDecimal HUNDRED = new BigDecimal("100");

    /**
     * Two weighings.
     *
     * @param step smallest step of the balance in grams; each weighing is good to half of it
     */
    public record Weighings(BigDecimal inAir, BigDecimal inWater, BigDecimal step, BigDecimal celsius) { }

    /** Share of the heavier metal by weight, 0 to 1, and the least and most that the balance allows. */
    public record Fineness(BigDecimal share, BigDecimal least, BigDecimal most) {

        /** "52 (51–54) per cent": never finer than whole per cents, which is all that two weighings support. */
        public String text() {
            return percent(share) + " (" + percent(least) + "–" + percent(most) + ") per cent";
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
     * The fineness from two weighings, the buoyancy of room air taken into account. Its error is the worst case of
     * half a step in each weighing, kept between none and all.
     *
     * @return empty where the temperature or the weights are out of range, or no alloy of these metals is so dense or light
     */
    public Optional<Fineness> fineness(Weighings weighed) {
        BigDecimal half = weighed.step().divide(TWO, Ratio.CARRIED);
        Optional<BigDecimal> middle = share(weighed, BigDecimal.ZERO);
        Optional<BigDecimal> least = share(weighed, half.negate());
        Optional<BigDecimal> most = share(weighed, half);
        if (middle.isEmpty() || least.isEmpty() || most.isEmpty() || most.get().signum() < 0
                || least.get().compareTo(BigDecimal.ONE) > 0) {
            return Optional.empty();
        }
        return Optional.of(new Fineness(kept(middle.get()), kept(least.get()), kept(most.get())));
    }

    /** A heavier coin in water and a lighter one in air make the denser alloy. */
    private Optional<BigDecimal> share(Weighings weighed, BigDecimal shift) {
        return Density.ofWater(weighed.celsius()).flatMap(water -> Density.ofCoin(weighed.inAir().subtract(shift),
                weighed.inWater().add(shift), water, Density.ROOM_AIR)).map(this::share);
    }

    private static BigDecimal kept(BigDecimal share) {
        return share.max(BigDecimal.ZERO).min(BigDecimal.ONE);
    }
}
