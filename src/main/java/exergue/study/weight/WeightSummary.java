package exergue.study.weight;

import exergue.model.StudyWord;
import exergue.study.Summary;
import exergue.study.figure.FigureTable;
import exergue.study.figure.Request;
import exergue.study.figure.Wording;
import exergue.study.group.Coins;
import exergue.study.statistic.Intervals;
import exergue.study.statistic.KernelDensity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The table that sums up weights: a column for each of a few groups, or a row for each of many. */
final class WeightSummary {

    /** As many groups stand side by side. */
    private static final int SIDE_BY_SIDE = 4;

    private final Wording wording;
    private final List<Coins> groups;

    WeightSummary(Request request) {
        this.wording = request.wording();
        this.groups = request.groups();
    }

    FigureTable table() {
        List<String> heads = heads(groups.size() > SIDE_BY_SIDE);
        List<List<String>> columns = groups.stream().map(group -> column(group, groups.size() > SIDE_BY_SIDE)).toList();
        List<String> note = List.of(wording.of(StudyWord.WEIGHT_NOTE));
        List<List<String>> rows = new ArrayList<>();
        if (groups.size() > SIDE_BY_SIDE) {
            List<String> head = new ArrayList<>(List.of(wording.of(StudyWord.GROUP)));
            head.addAll(heads);
            for (int i = 0; i < groups.size(); i++) {
                List<String> row = new ArrayList<>(List.of(groups.get(i).name()));
                row.addAll(columns.get(i));
                rows.add(row);
            }
            return FigureTable.of(head, rows, note);
        }
        List<String> head = new ArrayList<>(List.of(""));
        groups.forEach(group -> head.add(group.name()));
        for (int i = 0; i < heads.size(); i++) {
            List<String> row = new ArrayList<>(List.of(heads.get(i)));
            for (List<String> column : columns) {
                row.add(column.get(i));
            }
            rows.add(row);
        }
        return FigureTable.of(head, rows, note);
    }

    private List<String> heads(boolean brief) {
        List<StudyWord> words = brief
                ? List.of(StudyWord.N, StudyWord.LEFT_OUT, StudyWord.MEAN, StudyWord.SD, StudyWord.MEDIAN, StudyWord.QUARTILES, StudyWord.SPAN)
                : List.of(StudyWord.COUNTED, StudyWord.LEFT_OUT, StudyWord.MEAN, StudyWord.MEAN_INTERVAL, StudyWord.SD, StudyWord.SE,
                        StudyWord.MEDIAN, StudyWord.MEDIAN_INTERVAL, StudyWord.QUARTILES, StudyWord.SPAN, StudyWord.PEAK, StudyWord.BANDWIDTH);
        return words.stream().map(wording::of).toList();
    }

    private List<String> column(Coins group, boolean brief) {
        double[] weights = group.weights();
        int d = WeightPlaces.of(group, wording.form());
        Optional<Summary> summary = Summary.ofSorted(weights);
        String n = String.valueOf(weights.length);
        String out = String.valueOf(group.leftOut());
        String mean = wording.number(summary.map(Summary::mean), d);
        String sd = wording.number(summary.flatMap(s -> s.sd().isPresent() ? Optional.of(s.sd().getAsDouble()) : Optional.empty()), d + 1);
        String median = wording.number(summary.map(Summary::median), d);
        String quartiles = summary.map(s -> wording.span(s.lowerQuartile(), s.upperQuartile(), d)).orElse(Wording.NONE);
        String span = summary.map(s -> wording.span(s.least(), s.greatest(), d)).orElse(Wording.NONE);
        if (brief) {
            return List.of(n, out, mean, sd, median, quartiles, span);
        }
        Optional<KernelDensity> density = KernelDensity.of(weights);
        return List.of(n, out, mean, wording.interval(Intervals.ofMean(weights), d), sd,
                wording.number(Intervals.standardError(weights), d + 1), median, wording.interval(Intervals.ofMedian(weights), d),
                quartiles, span, wording.number(density.map(KernelDensity::peak), d),
                wording.number(density.map(KernelDensity::bandwidth), d + 1));
    }
}
