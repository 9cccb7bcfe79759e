package exergue.study.weight;

import exergue.study.Scale;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * Steps of equal width over all groups that are shown together. They begin at a multiple of the width, and each takes in its
 * lower limit, as the trade's frequency tables do (common practice, no source). Reckoned in decimals, so that 3.90 g falls where
 * a reader sees it fall.
 */
record Steps(BigDecimal from, BigDecimal width, int count) {

    /** No more than so many, whatever the author asks for. */
    private static final int MOST = 400;
    /** About so many where nobody says how wide they are. */
    private static final int USUAL = 18;

    /** @param samples each sorted; at least one has figures; @param width asked for; null where the tool is to choose */
    static Steps over(List<double[]> samples, BigDecimal width) {
        double least = samples.stream().filter(sample -> sample.length > 0).mapToDouble(sample -> sample[0]).min().orElseThrow();
        double greatest = samples.stream().filter(sample -> sample.length > 0).mapToDouble(sample -> sample[sample.length - 1]).max().orElseThrow();
        double span = Math.max(greatest - least, 0.01);
        BigDecimal step = width == null || span / width.doubleValue() > MOST ? Scale.step(span / USUAL) : width;
        long first = place(least, BigDecimal.ZERO, step);
        BigDecimal from = step.multiply(BigDecimal.valueOf(first));
        return new Steps(from, step, (int) (place(greatest, from, step) + 1));
    }

    private static long place(double figure, BigDecimal from, BigDecimal step) {
        return BigDecimal.valueOf(figure).subtract(from).divide(step, 0, RoundingMode.FLOOR).longValueExact();
    }

    /** Lower limit of a step. */
    BigDecimal limit(int step) {
        return from.add(width.multiply(BigDecimal.valueOf(step)));
    }

    List<Integer> counts(double[] figures) {
        int[] counts = new int[count];
        for (double figure : figures) {
            counts[(int) place(figure, from, width)]++;
        }
        List<Integer> all = new ArrayList<>(count);
        for (int one : counts) {
            all.add(one);
        }
        return all;
    }

    /** Decimals that its limits need. */
    int decimals() {
        return Math.max(0, width.stripTrailingZeros().scale());
    }
}
