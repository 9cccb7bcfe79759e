package exergue.study.die.show;

import exergue.study.chart.Links;
import java.util.ArrayList;
import java.util.List;

/**
 * Where names stand in their rows. The longer row is evenly filled; those of the shorter stand as near as can be to the middle of
 * their partners, at least one slot apart.
 *
 * @param upper middles of slots, from the left of the group
 */
record Places(List<Double> upper, List<Double> lower) {

    Places {
        upper = List.copyOf(upper);
        lower = List.copyOf(lower);
    }

    static Places of(int upper, int lower, List<Links.Line> lines) {
        List<Double> evenly = new ArrayList<>();
        for (int i = 0; i < Math.max(upper, lower); i++) {
            evenly.add(i + 0.5);
        }
        return upper >= lower ? new Places(evenly, apart(middles(lower, evenly, lines, false), evenly.size()))
                : new Places(apart(middles(upper, evenly, lines, true), evenly.size()), evenly);
    }

    private static List<Double> middles(int names, List<Double> partners, List<Links.Line> lines, boolean upper) {
        List<Double> middles = new ArrayList<>();
        for (int i = 0; i < names; i++) {
            int name = i;
            middles.add(lines.stream().filter(line -> (upper ? line.upper() : line.lower()) == name)
                    .mapToDouble(line -> partners.get(upper ? line.lower() : line.upper())).average().orElseThrow());
        }
        return middles;
    }

    /** Pushed apart from the left and from the right, and then half way between the two. */
    private static List<Double> apart(List<Double> wanted, int slots) {
        int names = wanted.size();
        double[] fromLeft = new double[names];
        double[] fromRight = new double[names];
        for (int i = 0; i < names; i++) {
            fromLeft[i] = Math.max(wanted.get(i), i == 0 ? 0.5 : fromLeft[i - 1] + 1);
        }
        for (int i = names - 1; i >= 0; i--) {
            double most = i == names - 1 ? slots - 0.5 : fromRight[i + 1] - 1;
            fromLeft[i] = Math.min(fromLeft[i], slots - 0.5 - (names - 1 - i));
            fromRight[i] = Math.max(Math.min(wanted.get(i), most), i + 0.5);
        }
        List<Double> places = new ArrayList<>();
        for (int i = 0; i < names; i++) {
            places.add((fromLeft[i] + fromRight[i]) / 2);
        }
        return places;
    }
}
