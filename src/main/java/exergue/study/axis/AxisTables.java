package exergue.study.axis;

import exergue.model.AxisWord;
import exergue.model.StudyWord;
import exergue.model.Worded;
import exergue.study.chart.Rose;
import exergue.study.figure.FigureTable;
import exergue.study.figure.Plot;
import exergue.study.figure.Request;
import exergue.study.figure.SideBySide;
import exergue.study.figure.Wording;
import exergue.study.group.Coins;
import exergue.study.statistic.Directions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tables and roses of die-axes. */
final class AxisTables {

    private static final int HOURS = 12;
    private static final List<Worded> BRIEF = List.of(StudyWord.N, AxisWord.MEAN_AXIS, AxisWord.R, AxisWord.RAYLEIGH, AxisWord.RAYLEIGH_DOUBLED,
            AxisWord.VERDICT);
    private static final List<Worded> FULL = List.of(AxisWord.AXES, AxisWord.MEAN_AXIS, AxisWord.R, AxisWord.RAYLEIGH, AxisWord.R_DOUBLED,
            AxisWord.RAYLEIGH_DOUBLED, AxisWord.CONCENTRATION, AxisWord.VERDICT);

    private final Request request;
    private final Wording wording;

    AxisTables(Request request) {
        this.request = request;
        this.wording = request.wording();
    }

    FigureTable summary() {
        SideBySide table = new SideBySide(request);
        return table.table(table.brief() ? BRIEF : FULL, group -> figures(group, table.brief()), List.of(wording.of(AxisWord.NOTE)));
    }

    private List<String> figures(Coins group, boolean brief) {
        Axes axes = Axes.of(group.axes());
        if (axes.n() == 0) {
            List<String> none = new ArrayList<>(List.of("0"));
            while (none.size() < (brief ? BRIEF : FULL).size()) {
                none.add(Wording.NONE);
            }
            return none;
        }
        String n = String.valueOf(axes.n());
        String p = wording.probability(axes.one().rayleigh());
        String opposite = wording.probability(axes.doubled().rayleigh());
        String verdict = wording.of(axes.verdict().word());
        if (brief) {
            return List.of(n, mean(axes, wording), wording.number(axes.r(), 2), p, opposite, verdict);
        }
        return List.of(n, mean(axes, wording), wording.number(axes.r(), 2), p, wording.number(axes.rDoubled(), 2), opposite,
                wording.number(axes.inTwoDirections() ? Directions.concentration(axes.rDoubled(), axes.n())
                        : Directions.concentration(axes.r(), axes.n()), 1), verdict);
    }

    /** "11.8"; "5.9/11.9" for two opposite directions; a dash where the axes cancel each other or may as well be random. */
    static String mean(Axes axes, Wording wording) {
        Optional<Double> mean = axes.mean();
        if (mean.isEmpty() || axes.verdict() == Verdict.RANDOM) {
            return Wording.NONE;
        }
        double tenths = Math.rint(mean.get() * 10) / 10;
        if (!axes.inTwoDirections()) {
            return hour(tenths % HOURS, wording);
        }
        double first = tenths % (HOURS / 2.0);
        return hour(first, wording) + "/" + hour(first + HOURS / 2.0, wording);
    }

    /** To a tenth of an hour; less than one is after twelve o'clock. */
    private static String hour(double tenths, Wording wording) {
        return wording.number(tenths < 1 ? tenths + HOURS : tenths, 1);
    }

    FigureTable hours() {
        List<String> head = new ArrayList<>(List.of(wording.of(AxisWord.HOUR)));
        request.groups().forEach(group -> head.add(group.name()));
        List<List<Double>> counts = request.groups().stream().map(group -> HourCounts.of(group.axes())).toList();
        List<List<String>> rows = new ArrayList<>();
        for (int hour = 1; hour <= HOURS; hour++) {
            List<String> row = new ArrayList<>(List.of(String.valueOf(hour)));
            for (List<Double> one : counts) {
                row.add(count(one.get(hour % HOURS)));
            }
            rows.add(row);
        }
        List<String> total = new ArrayList<>(List.of(wording.of(StudyWord.TOTAL)));
        request.groups().forEach(group -> total.add(String.valueOf(group.axes().length)));
        rows.add(total);
        boolean halves = counts.stream().flatMap(List::stream).anyMatch(count -> count != Math.rint(count));
        return FigureTable.of(head, rows, halves ? List.of(wording.of(AxisWord.HALF_NOTE)) : List.of());
    }

    private static String count(double count) {
        int whole = (int) count;
        String half = count > whole ? "½" : "";
        return whole == 0 && half.isEmpty() ? Wording.NONE : (whole == 0 ? "" : whole) + half;
    }

    Plot rose() {
        List<Rose.Dial> dials = new ArrayList<>();
        StringBuilder alternative = new StringBuilder(wording.of(AxisWord.ROSE_ALT));
        for (Coins group : request.groups()) {
            Axes axes = Axes.of(group.axes());
            if (axes.n() > 0) {
                List<Double> counts = HourCounts.of(axes.hours());
                boolean told = axes.verdict() != Verdict.RANDOM && axes.verdict() != Verdict.TOO_FEW;
                dials.add(new Rose.Dial(group.name(), wording.of(StudyWord.COINS_N, "n", String.valueOf(axes.n())), counts,
                        told ? axes.mean() : Optional.empty(), axes.inTwoDirections()));
                alternative.append(' ').append(words(group, axes.n(), counts));
            }
        }
        FigureTable hours = hours();
        return new Plot(new Rose(dials), alternative.toString(), hours, hours.notes());
    }

    private String words(Coins group, int n, List<Double> counts) {
        List<String> at = new ArrayList<>();
        for (int hour = 1; hour <= HOURS; hour++) {
            if (counts.get(hour % HOURS) > 0) {
                at.add(wording.of(AxisWord.AT_HOUR, "count", count(counts.get(hour % HOURS)), "hour", String.valueOf(hour)));
            }
        }
        return wording.of(AxisWord.DIAL_ALT, "name", group.name(), "n", String.valueOf(n), "counts", String.join(", ", at));
    }
}
