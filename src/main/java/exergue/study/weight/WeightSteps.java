package exergue.study.weight;

import exergue.model.CoinGroup;
import exergue.model.StudyWord;
import exergue.study.chart.Histogram;
import exergue.study.chart.Point;
import exergue.study.figure.FigureTable;
import exergue.study.figure.Plot;
import exergue.study.figure.Request;
import exergue.study.figure.Wording;
import exergue.study.group.Coins;
import exergue.study.statistic.KernelDensity;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Weights counted in steps: the frequency table and the histogram, which show the same counts. */
final class WeightSteps {

    private final Request request;
    private final Wording wording;
    private final List<Coins> groups;
    private final List<double[]> samples;
    private final Steps steps;

    /** At least one group must have a weight that counts. */
    WeightSteps(Request request) {
        this.request = request;
        this.wording = request.wording();
        this.groups = request.groups().stream().filter(group -> group.weights().length > 0).toList();
        this.samples = groups.stream().map(Coins::weights).toList();
        this.steps = Steps.over(samples, request.declaredSteps().orElse(null));
    }

    FigureTable table() {
        List<List<Integer>> counts = samples.stream().map(steps::counts).toList();
        List<String> head = new ArrayList<>(List.of(wording.of(StudyWord.STEP)));
        groups.forEach(group -> head.add(group.name()));
        List<List<String>> rows = new ArrayList<>();
        for (int step = 0; step < steps.count(); step++) {
            List<String> row = new ArrayList<>(List.of(limit(step) + "–" + limit(step + 1)));
            for (List<Integer> one : counts) {
                row.add(one.get(step) == 0 ? Wording.NONE : String.valueOf(one.get(step)));
            }
            rows.add(row);
        }
        List<String> total = new ArrayList<>(List.of(wording.of(StudyWord.TOTAL)));
        samples.forEach(sample -> total.add(String.valueOf(sample.length)));
        rows.add(total);
        return FigureTable.of(head, rows, List.of(wording.of(StudyWord.STEP_NOTE)));
    }

    Plot histogram() {
        List<Histogram.Panel> panels = new ArrayList<>();
        StringBuilder alternative = new StringBuilder(wording.of(StudyWord.HISTOGRAM_ALT, "step", decimal(steps.width())));
        for (int i = 0; i < groups.size(); i++) {
            List<Integer> counts = steps.counts(samples.get(i));
            panels.add(new Histogram.Panel(wording.of(StudyWord.NAME_AND_N, "name", groups.get(i).name(), "n",
                    String.valueOf(samples.get(i).length)), counts, curve(samples.get(i)), Arrays.stream(samples.get(i)).boxed().toList()));
            alternative.append(' ').append(words(groups.get(i), samples.get(i), counts));
        }
        Optional<Histogram.Mark> mark = request.standard().map(this::mark);
        mark.ifPresent(one -> alternative.append(' ').append(wording.of(StudyWord.MARK_ALT, "name", one.name())));
        return new Plot(new Histogram(wording.of(StudyWord.WEIGHT_AXIS), steps.from().doubleValue(), steps.width().doubleValue(),
                wording.form().decimalMark(), panels, mark), alternative.toString(), table(), List.of());
    }

    /** As high as a count would be: density times number times width of a step. */
    private List<Point> curve(double[] sample) {
        double unit = sample.length * steps.width().doubleValue();
        List<Point> points = new ArrayList<>();
        KernelDensity.of(sample).ifPresent(density -> {
            for (int i = 0; i < density.points(); i += 2) {
                points.add(new Point(density.at(i), density.height(i) * unit));
            }
        });
        return points;
    }

    private Histogram.Mark mark(CoinGroup.WeightStandard standard) {
        double weight = Standard.weight(standard);
        String name = Standard.name(standard, wording);
        return new Histogram.Mark(weight, name + " " + wording.with(wording.number(weight, wording.form().weightDecimals()), "g"));
    }

    private String words(Coins group, double[] sample, List<Integer> counts) {
        int highest = 0;
        for (int i = 1; i < counts.size(); i++) {
            highest = counts.get(i) > counts.get(highest) ? i : highest;
        }
        int d = WeightPlaces.of(group, wording.form());
        return wording.of(StudyWord.PANEL_ALT, "name", group.name(), "n", String.valueOf(sample.length), "least",
                wording.number(sample[0], d), "greatest", wording.number(sample[sample.length - 1], d), "most",
                String.valueOf(counts.get(highest)), "from", limit(highest), "to", limit(highest + 1));
    }

    private String limit(int step) {
        return decimal(steps.limit(step));
    }

    private String decimal(BigDecimal limit) {
        return wording.form().decimal(limit.setScale(steps.decimals(), wording.form().rounding()));
    }
}
