package exergue.study.weight;

import exergue.model.StudyWord;
import exergue.study.Summary;
import exergue.study.figure.FigureTable;
import exergue.study.figure.Request;
import exergue.study.figure.SideBySide;
import exergue.study.figure.Wording;
import exergue.study.group.Coins;
import exergue.study.statistic.Intervals;
import exergue.study.statistic.KernelDensity;
import java.util.List;
import java.util.Optional;

/** The table that sums up weights. */
final class WeightSummary {

    private static final List<StudyWord> BRIEF = List.of(StudyWord.N, StudyWord.LEFT_OUT, StudyWord.MEAN, StudyWord.SD, StudyWord.MEDIAN,
            StudyWord.QUARTILES, StudyWord.SPAN);
    private static final List<StudyWord> FULL = List.of(StudyWord.COUNTED, StudyWord.LEFT_OUT, StudyWord.MEAN, StudyWord.MEAN_INTERVAL,
            StudyWord.SD, StudyWord.SE, StudyWord.MEDIAN, StudyWord.MEDIAN_INTERVAL, StudyWord.QUARTILES, StudyWord.SPAN, StudyWord.PEAK,
            StudyWord.BANDWIDTH);

    private final Request request;
    private final Wording wording;

    WeightSummary(Request request) {
        this.request = request;
        this.wording = request.wording();
    }

    FigureTable table() {
        SideBySide table = new SideBySide(request);
        return table.brief() ? table.table(BRIEF, this::brief, List.of(wording.of(StudyWord.WEIGHT_NOTE_BRIEF)))
                : table.table(FULL, this::full, List.of(wording.of(StudyWord.WEIGHT_NOTE)));
    }

    private List<String> brief(Coins group) {
        double[] weights = group.weights();
        int d = WeightPlaces.of(group, wording.form());
        Optional<Summary> summary = Summary.ofSorted(weights);
        return List.of(String.valueOf(weights.length), String.valueOf(group.leftOut()), wording.number(summary.map(Summary::mean), d),
                sd(summary, d), wording.number(summary.map(Summary::median), d), quartiles(summary, d), span(summary, d));
    }

    private List<String> full(Coins group) {
        double[] weights = group.weights();
        int d = WeightPlaces.of(group, wording.form());
        Optional<Summary> summary = Summary.ofSorted(weights);
        Optional<KernelDensity> density = KernelDensity.of(weights);
        return List.of(String.valueOf(weights.length), String.valueOf(group.leftOut()), wording.number(summary.map(Summary::mean), d),
                wording.interval(Intervals.ofMean(weights), d), sd(summary, d), wording.number(Intervals.standardError(weights), d + 1),
                wording.number(summary.map(Summary::median), d), wording.interval(Intervals.ofMedian(weights), d), quartiles(summary, d),
                span(summary, d), wording.number(density.map(KernelDensity::peak), d),
                wording.number(density.map(KernelDensity::bandwidth), d + 1));
    }

    /** A spread is worth one decimal more than what it is a spread of. */
    private String sd(Optional<Summary> summary, int decimals) {
        return wording.number(summary.filter(s -> s.sd().isPresent()).map(s -> s.sd().getAsDouble()), decimals + 1);
    }

    private String quartiles(Optional<Summary> summary, int decimals) {
        return summary.map(s -> wording.span(s.lowerQuartile(), s.upperQuartile(), decimals)).orElse(Wording.NONE);
    }

    private String span(Optional<Summary> summary, int decimals) {
        return summary.map(s -> wording.span(s.least(), s.greatest(), decimals)).orElse(Wording.NONE);
    }
}
