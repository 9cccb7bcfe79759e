package exergue.study.weight;

import exergue.study.Summary;
import exergue.study.figure.Exhibit;
import exergue.study.figure.Request;
import exergue.study.figure.Subject;
import exergue.study.figure.Wording;
import exergue.study.group.Coins;
import exergue.study.statistic.Intervals;
import exergue.study.statistic.KernelDensity;
import java.util.List;
import java.util.Optional;

/** Weights of groups. */
public final class WeightSubject implements Subject {

    private static final String UNIT = "g";

    @Override
    public String word() {
        return "weights";
    }

    @Override
    public List<String> forms() {
        return List.of("table", "frequencies", "histogram");
    }

    @Override
    public Optional<Exhibit> show(String form, Request request) {
        if (request.groups().stream().allMatch(group -> group.weights().length == 0)) {
            return Optional.empty();
        }
        return Optional.of(switch (form) {
            case "table" -> new WeightSummary(request).table();
            case "frequencies" -> new WeightSteps(request).table();
            case "histogram" -> new WeightSteps(request).histogram();
            default -> throw new IllegalArgumentException(form);
        });
    }

    @Override
    public List<String> figures() {
        return List.of("coins", "weighed coins", "damaged coins", "mean weight", "median weight", "least weight", "greatest weight",
                "standard deviation of weight", "interval of mean weight", "peak weight");
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
            default -> throw new IllegalArgumentException(name);
        };
    }
}
