package exergue.study.statistic;

import exergue.study.Summary;
import java.util.Arrays;
import java.util.Optional;

/**
 * Where most figures of a sample lie, with its interval: the peak of the {@link KernelDensity}, and between which figures the
 * peaks of 95 per cent of 999 samples lie that are drawn from it with replacement (percentile bootstrap: Efron and Tibshirani, An
 * Introduction to the Bootstrap, 1993, ch. 13; cited from memory), the bandwidth kept. The draws are the same in every run.
 */
public record Peak(double at, Interval interval) {

    /** With fewer figures the interval would only repeat them. A choice, no source. */
    public static final int FEWEST = 10;

    private static final int SAMPLES = 999;
    private static final long SEED = 42;
    private static final double TAIL = 0.025;

    /** Empty for fewer than ten figures, and where all are equal. */
    public static Optional<Peak> of(double[] sorted) {
        if (sorted.length < FEWEST) {
            return Optional.empty();
        }
        return KernelDensity.of(sorted).map(density -> new Peak(density.peak(), interval(sorted, density)));
    }

    private static Interval interval(double[] sorted, KernelDensity density) {
        FixedDraws draws = new FixedDraws(SEED);
        double[] peaks = new double[SAMPLES];
        double[] sample = new double[sorted.length];
        for (int i = 0; i < SAMPLES; i++) {
            for (int j = 0; j < sample.length; j++) {
                sample[j] = sorted[draws.below(sorted.length)];
            }
            peaks[i] = density.peakOf(sample);
        }
        Arrays.sort(peaks);
        return new Interval(Summary.quantile(peaks, TAIL), Summary.quantile(peaks, 1 - TAIL));
    }
}
