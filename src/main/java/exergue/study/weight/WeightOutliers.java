package exergue.study.weight;

import exergue.model.StudyWord;
import exergue.study.Spread;
import exergue.study.figure.FigureTable;
import exergue.study.figure.FigureTable.Cell;
import exergue.study.figure.Request;
import exergue.study.figure.Wording;
import exergue.study.group.Coins;
import exergue.study.group.Member;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Coins whose weight lies far from those of their group, by a rule that a few wild weights cannot move. */
final class WeightOutliers {

    private final Wording wording;
    private final List<Coins> groups;

    WeightOutliers(Request request) {
        this.wording = request.wording();
        this.groups = request.groups();
    }

    FigureTable table() {
        List<List<Cell>> rows = new ArrayList<>();
        groups.forEach(group -> add(group, rows));
        int n = groups.stream().mapToInt(group -> group.weights().length).sum();
        List<String> notes = List.of(wording.of(rows.isEmpty() ? StudyWord.NO_OUTLIERS : StudyWord.OUTLIER_NOTE, "n", String.valueOf(n)));
        return new FigureTable(List.of("left", "left", "right", "right", "right"),
                List.of(Cell.of(wording.of(StudyWord.COIN)), Cell.of(wording.of(StudyWord.GROUP)), Cell.of(wording.of(StudyWord.WEIGHT_AXIS)),
                        Cell.of(wording.of(StudyWord.MEDIAN)), Cell.of("z")), rows, notes);
    }

    private void add(Coins group, List<List<Cell>> rows) {
        double[] weights = group.weights();
        if (weights.length == 0) {
            return;
        }
        Spread spread = Spread.ofSorted(weights);
        if (spread.mad() <= 0) {
            return;
        }
        int d = WeightPlaces.of(group, wording.form());
        group.members().stream().filter(Member::counts).filter(coin -> Math.abs(spread.modifiedZ(weight(coin))) > Spread.OUTLIER)
                .sorted(Comparator.comparingDouble(WeightOutliers::weight).thenComparing(Member::id))
                .forEach(coin -> rows.add(List.of(new Cell("", List.of(coin.id())), Cell.of(group.name()),
                        Cell.of(wording.number(weight(coin), d)), Cell.of(wording.number(spread.median(), d)),
                        Cell.of(wording.number(spread.modifiedZ(weight(coin)), 1)))));
    }

    private static double weight(Member coin) {
        return coin.weight().orElseThrow();
    }
}
