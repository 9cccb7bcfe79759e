package exergue.study.weight;

import exergue.model.CoinGroup;
import exergue.model.StudyWord;
import exergue.study.Summary;
import exergue.study.figure.Exhibit;
import exergue.study.figure.Request;
import exergue.study.figure.Subject;
import exergue.study.figure.Wording;
import exergue.study.group.Coins;
import exergue.study.statistic.Intervals;
import exergue.study.statistic.KernelDensity;
import exergue.study.statistic.Peak;
import java.util.List;
import java.util.Optional;

/** Weights of groups. */
public final class WeightSubject implements Subject {

    private static final String UNIT = "g";
    /** Panels of a histogram that stand on a page with their caption. */
    private static final int PANELS = 7;
    /** Each with each of the others: 28 pairs. */
    private static final int COMPARED = 8;

    @Override
    public String word() {
        return "weights";
    }

    @Override
    public List<String> forms() {
        return List.of("table", "frequencies", "histogram", COMPARISON, "outliers", "standard");
    }

    @Override
    public Optional<Exhibit> show(String form, Request request) {
        if (request.groups().stream().allMatch(group -> group.weights().length == 0)) {
            return Optional.empty();
        }
        return switch (form) {
            case "table" -> Optional.of(new WeightSummary(request).table());
            case "frequencies" -> Optional.of(new WeightSteps(request).table());
            case "histogram" -> Optional.of(new WeightSteps(request).histogram());
            case COMPARISON -> Optional.of(new WeightComparison(request)).filter(comparison -> !comparison.isEmpty())
                    .map(WeightComparison::table);
            case "outliers" -> Optional.of(new WeightOutliers(request).table());
            case "standard" -> new StandardTable(request).table().map(table -> table);
            default -> throw new IllegalArgumentException(form);
        };
    }

    @Override
    public int most(String form) {
        return switch (form) {
            case "histogram" -> PANELS;
            case COMPARISON -> COMPARED;
            default -> Integer.MAX_VALUE;
        };
    }

    @Override
    public List<String> figures() {
        return List.of("coins", "weighed coins", "damaged coins", "mean weight", "median weight", "least weight", "greatest weight",
                "standard deviation of weight", "interval of mean weight", "peak weight", "interval of peak weight", "distance from standard", "standard weight");
    }

    private static Optional<Double> standard(Coins coins) {
        return coins.declared().flatMap(CoinGroup::standard).map(Standard::weight);
    }

    /** "0.10 g below", to stand before the name of the standard. */
    private static String distance(Coins coins, double[] weights, Wording wording) {
        Optional<Double> peak = KernelDensity.of(weights).map(KernelDensity::peak);
        if (peak.isEmpty() || standard(coins).isEmpty()) {
            return Wording.NONE;
        }
        double distance = peak.get() - standard(coins).get();
        return wording.of(distance < 0 ? StudyWord.BELOW : StudyWord.ABOVE, "distance",
                wording.with(wording.number(Math.abs(distance), WeightPlaces.of(coins, wording.form())), UNIT));
    }

    @Override
    public String figure(String name, Coins coins, Wording wording) {
        double[] weights = coins.weights();
        int d = WeightPlaces.of(coins, wording.form());
        Optional<Summary> summary = Summary.ofSorted(weights);
        return switch (name) {
            case "coins" -> String.valueOf(coins.members().size());
            case "weighed coins" -> String.valueOf(weights.length);
            case "damaged coins" -> String.valueOf(coins.leftOut());
            case "mean weight" -> wording.with(wording.number(summary.map(Summary::mean), d), UNIT);
            case "median weight" -> wording.with(wording.number(summary.map(Summary::median), d), UNIT);
            case "least weight" -> wording.with(wording.number(summary.map(Summary::least), d), UNIT);
            case "greatest weight" -> wording.with(wording.number(summary.map(Summary::greatest), d), UNIT);
            case "standard deviation of weight" -> wording.with(wording.number(summary.filter(s -> s.sd().isPresent())
                    .map(s -> s.sd().getAsDouble()), d + 1), UNIT);
            case "interval of mean weight" -> wording.with(wording.interval(Intervals.ofMean(weights), d), UNIT);
            case "peak weight" -> wording.with(wording.number(KernelDensity.of(weights).map(KernelDensity::peak), d), UNIT);
            case "interval of peak weight" -> wording.with(wording.interval(Peak.of(weights).map(Peak::interval), d), UNIT);
            case "standard weight" -> wording.with(wording.number(standard(coins), d), UNIT);
            case "distance from standard" -> distance(coins, weights, wording);
            default -> throw new IllegalArgumentException(name);
        };
    }
}
