package exergue.edition.apparatus;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * How many coins a site lost in a period, made comparable between sites and periods. Both formulas from memory: R. Reece,
 * Site-finds in Roman Britain, Britannia 26 (1995); P. J. Casey, Understanding Ancient Coins (1986).
 */
final class LossRate {

    private static final BigDecimal THOUSAND = BigDecimal.valueOf(1000);

    private LossRate() { }

    /** Coins of the period among a thousand of the site, after Reece: n / N × 1000; to one decimal. */
    static BigDecimal perThousand(int coins, int all) {
        return rounded(exact(coins, all));
    }

    /** The same with all its figures, to reckon on with. */
    static BigDecimal exact(int coins, int all) {
        return BigDecimal.valueOf(coins).multiply(THOUSAND).divide(BigDecimal.valueOf(all), MathContext.DECIMAL128);
    }

    /** To one decimal. */
    static BigDecimal rounded(BigDecimal perThousand) {
        return perThousand.setScale(1, RoundingMode.HALF_EVEN);
    }

    /** The same for each year of the period, after Casey: n / L × 1000 / N; to two decimals. */
    static BigDecimal perYear(int coins, int years, int all) {
        return BigDecimal.valueOf(coins).multiply(THOUSAND)
                .divide(BigDecimal.valueOf((long) years * all), 2, RoundingMode.HALF_EVEN);
    }
}
