package exergue.study.die;

/** How many dies there were if each struck the same number of coins: no issue can have had fewer without chance helping. */
final class EqualDies {

    private static final double FINE = 1e-9;

    private EqualDies() { }

    /** D for which n draws from D equal dies are expected to show d of them; not a number where every coin has its own. */
    static double of(DieCounts counts) {
        double n = counts.coins();
        double d = counts.dies();
        if (d == 1) {
            return 1;
        }
        double low = d;
        double high = 2 * d;
        while (seen(high, n) < d) {
            if (high > 1e12) {
                return Double.NaN;
            }
            high *= 2;
        }
        while (high - low > FINE * high) {
            double middle = (low + high) / 2;
            if (seen(middle, n) < d) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** Written with logarithms, which keep their figures where 1/D is very small. */
    private static double seen(double dies, double coins) {
        return -dies * Math.expm1(coins * Math.log1p(-1 / dies));
    }
}
