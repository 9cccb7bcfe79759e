package exergue.bench;

import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.measure.PrintForm;
import exergue.measure.Working;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Times what {@code reading} does with one text, from the text to its whole working, in a machine that is warm: median,
 * 99th percentile and worst over a fixed set of texts, some plain, some awkward, some hostile.
 */
public final class ReadingBench {

    private static final int ROUNDS = 2_000;
    private static final double NANOS_IN_A_MILLISECOND = 1e6;

    private record Text(Kind kind, String text) { }

    private static final List<Text> TEXTS = List.of(
            new Text(Kind.WEIGHT, "3.87 g"), new Text(Kind.WEIGHT, "59.7 grains"), new Text(Kind.WEIGHT, "59.7 gr"),
            new Text(Kind.WEIGHT, "2 dwt 11 grains"), new Text(Kind.WEIGHT, "1 livre 3 onces 2 gros 17½ grains"),
            new Text(Kind.WEIGHT, "c.\u00A03.9\u202Fg"), new Text(Kind.WEIGHT, "1/3 zolotnik"),
            new Text(Kind.DIAMETER, "18 x 17 mm"), new Text(Kind.DIAMETER, "1 3/16″"), new Text(Kind.DIAMETER, "17–19 mm"),
            new Text(Kind.DIAMETER, "size 5"), new Text(Kind.AXIS, "-390°"), new Text(Kind.AXIS, "↗"), new Text(Kind.AXIS, "6:30"),
            new Text(Kind.THICKNESS, "2.1 mm"), new Text(Kind.DENSITY, "14.103 g in air, 13.081 g in water, 20 °C"),
            new Text(Kind.WEIGHT, "missing: not recorded"), new Text(Kind.WEIGHT, "three grams or so"),
            new Text(Kind.WEIGHT, "9".repeat(400)), new Text(Kind.WEIGHT, "1/".repeat(200)),
            new Text(Kind.DIAMETER, "x ".repeat(200)), new Text(Kind.DENSITY, "in air ".repeat(57)),
            new Text(Kind.WEIGHT, "O0".repeat(200)), new Text(Kind.AXIS, "↓".repeat(400)), new Text(Kind.WEIGHT, "g ".repeat(100_000)));

    private ReadingBench() { }

    public static void main(String[] arguments) {
        measure(TEXTS);
        long[] times = measure(TEXTS);
        System.out.printf(Locale.ROOT, "Java %s, %d processors; %d texts, %d readings: median %.3f ms, 99th percentile %.3f ms, "
                        + "worst %.3f ms%n", Runtime.version(), Runtime.getRuntime().availableProcessors(), TEXTS.size(), times.length,
                at(times, 0.5), at(times, 0.99), at(times, 1));
        System.out.printf(Locale.ROOT, "slowest text by its median: %s%n", slowest());
    }

    /** Every text in every round, sorted by time. */
    private static long[] measure(List<Text> texts) {
        long[] times = new long[ROUNDS * texts.size()];
        int i = 0;
        for (int round = 0; round < ROUNDS; round++) {
            for (Text text : texts) {
                long start = System.nanoTime();
                Working.of(text.kind(), text.text(), Convention.UNDECLARED, PrintForm.DEFAULT);
                times[i++] = System.nanoTime() - start;
            }
        }
        Arrays.sort(times);
        return times;
    }

    private static String slowest() {
        double most = 0;
        String slowest = "";
        for (Text text : TEXTS) {
            double median = at(measure(List.of(text)), 0.5);
            if (median > most) {
                most = median;
                slowest = String.format(Locale.ROOT, "%.3f ms for %s of %d characters, “%.20s…”", median, text.kind().word(),
                        text.text().length(), text.text());
            }
        }
        return slowest;
    }

    private static double at(long[] sorted, double share) {
        return sorted[(int) Math.min(sorted.length - 1, Math.round(share * sorted.length))] / NANOS_IN_A_MILLISECOND;
    }
}
