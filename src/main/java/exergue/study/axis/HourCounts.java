package exergue.study.axis;

import java.util.ArrayList;
import java.util.List;

/** Axes counted by the hour. */
final class HourCounts {

    private static final int HOURS = 12;
    private static final double ROUNDING = 1e-9;

    private HourCounts() { }

    /**
     * Twelve counts, twelve o'clock first. An axis between two hours counts for the nearer; one exactly midway half for each.
     *
     * @param hours from 0 to less than 12
     */
    static List<Double> of(double[] hours) {
        double[] counts = new double[HOURS];
        for (double hour : hours) {
            int below = (int) Math.floor(hour + ROUNDING);
            double beyond = hour - below;
            if (Math.abs(beyond - 0.5) < ROUNDING) {
                counts[below % HOURS] += 0.5;
                counts[(below + 1) % HOURS] += 0.5;
            } else {
                counts[(beyond < 0.5 ? below : below + 1) % HOURS]++;
            }
        }
        List<Double> all = new ArrayList<>();
        for (double count : counts) {
            all.add(count);
        }
        return all;
    }
}
