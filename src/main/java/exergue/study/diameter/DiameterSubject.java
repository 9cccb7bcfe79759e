package exergue.study.diameter;

import exergue.measure.Kind;
import exergue.model.AxisWord;
import exergue.model.StudyWord;
import exergue.model.Worded;
import exergue.study.Summary;
import exergue.study.chart.Point;
import exergue.study.chart.Scatter;
import exergue.study.figure.Exhibit;
import exergue.study.figure.FigureTable;
import exergue.study.figure.Plot;
import exergue.study.figure.Request;
import exergue.study.figure.SideBySide;
import exergue.study.figure.Subject;
import exergue.study.figure.Wording;
import exergue.study.group.Coins;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Diameters of groups, and weight over diameter. */
public final class DiameterSubject implements Subject {

    private static final List<Worded> STATISTICS = List.of(AxisWord.DIAMETERS, StudyWord.MEAN, StudyWord.SD, StudyWord.MEDIAN,
            StudyWord.QUARTILES, StudyWord.SPAN);
    private static final String UNIT = "mm";
    /** Marks that stay apart. */
    private static final int MARKS = 6;

    @Override
    public String word() {
        return "diameters";
    }

    @Override
    public List<String> forms() {
        return List.of("table", "scatter");
    }

    @Override
    public Optional<Exhibit> show(String form, Request request) {
        if (request.groups().stream().allMatch(group -> group.diameters().length == 0)) {
            return Optional.empty();
        }
        return switch (form) {
            case "table" -> Optional.of(table(request));
            case "scatter" -> scatter(request);
            default -> throw new IllegalArgumentException(form);
        };
    }

    private static FigureTable table(Request request) {
        return new SideBySide(request).table(STATISTICS, group -> figures(group, request.wording()),
                List.of(request.wording().of(AxisWord.DIAMETER_NOTE)));
    }

    /** Means are worth one decimal more than a diameter, spreads likewise. */
    private static List<String> figures(Coins group, Wording wording) {
        double[] diameters = group.diameters();
        int d = wording.form().decimals(Kind.DIAMETER);
        Optional<Summary> summary = Summary.ofSorted(diameters);
        return List.of(String.valueOf(diameters.length), wording.number(summary.map(Summary::mean), d + 1),
                wording.number(summary.filter(s -> s.sd().isPresent()).map(s -> s.sd().getAsDouble()), d + 1),
                wording.number(summary.map(Summary::median), d + 1),
                summary.map(s -> wording.span(s.lowerQuartile(), s.upperQuartile(), d + 1)).orElse(Wording.NONE),
                summary.map(s -> wording.span(s.least(), s.greatest(), d)).orElse(Wording.NONE));
    }

    private static Optional<Exhibit> scatter(Request request) {
        Wording wording = request.wording();
        List<Scatter.Series> series = new ArrayList<>();
        StringBuilder alternative = new StringBuilder(wording.of(AxisWord.SCATTER_ALT));
        for (Coins group : request.groups()) {
            List<Point> points = group.members().stream().filter(coin -> coin.counts() && coin.diameter().isPresent())
                    .map(coin -> new Point(coin.diameter().getAsDouble(), coin.weight().orElseThrow())).toList();
            if (!points.isEmpty()) {
                series.add(new Scatter.Series(wording.of(StudyWord.NAME_AND_N, "name", group.name(), "n", String.valueOf(points.size())), points));
                alternative.append(' ').append(words(group, points, wording));
            }
        }
        return series.isEmpty() ? Optional.empty() : Optional.of(new Plot(new Scatter(wording.of(AxisWord.DIAMETER_AXIS),
                wording.of(StudyWord.WEIGHT_AXIS), wording.form().decimalMark(), series), alternative.toString(), table(request), List.of()));
    }

    private static String words(Coins group, List<Point> points, Wording wording) {
        double[] across = points.stream().mapToDouble(Point::x).sorted().toArray();
        double[] up = points.stream().mapToDouble(Point::y).sorted().toArray();
        int d = wording.form().decimals(Kind.DIAMETER);
        int places = wording.form().decimals(Kind.WEIGHT);
        return wording.of(AxisWord.SERIES_ALT, "name", group.name(), "n", String.valueOf(points.size()), "from", wording.number(across[0], d),
                "to", wording.number(across[across.length - 1], d), "least", wording.number(up[0], places),
                "greatest", wording.number(up[up.length - 1], places));
    }

    @Override
    public int most(String form) {
        return form.equals("scatter") ? MARKS : Integer.MAX_VALUE;
    }

    @Override
    public List<String> figures() {
        return List.of("mean diameter", "median diameter", "least diameter", "greatest diameter");
    }

    @Override
    public String figure(String name, Coins coins, Wording wording) {
        Optional<Summary> summary = Summary.ofSorted(coins.diameters());
        int d = wording.form().decimals(Kind.DIAMETER);
        return wording.with(switch (name) {
            case "mean diameter" -> wording.number(summary.map(Summary::mean), d + 1);
            case "median diameter" -> wording.number(summary.map(Summary::median), d + 1);
            case "least diameter" -> wording.number(summary.map(Summary::least), d);
            case "greatest diameter" -> wording.number(summary.map(Summary::greatest), d);
            default -> throw new IllegalArgumentException(name);
        }, UNIT);
    }
}
