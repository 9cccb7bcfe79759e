package exergue.study.axis;

import exergue.model.AxisWord;
import exergue.model.StudyWord;
import exergue.study.figure.FigureTable;
import exergue.study.figure.Request;
import exergue.study.figure.Wording;
import exergue.study.group.Coins;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.inference.FisherExactTest;

/** Every two groups compared by how strictly they kept to their axis: a regular mint with an irregular one. */
final class AxisComparison {

    private static final double LEVEL = 0.05;

    private final Wording wording;
    private final List<List<String>> rows = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final List<String> alike = new ArrayList<>();

    AxisComparison(Request request) {
        this.wording = request.wording();
        notes.add(wording.of(AxisWord.COMPARISON_NOTE));
        List<Coins> groups = request.groups().stream().filter(group -> group.axes().length > 0).toList();
        for (int i = 0; i < groups.size(); i++) {
            for (Coins other : groups.subList(i + 1, groups.size())) {
                compare(groups.get(i), other);
            }
        }
    }

    /** Whether there are two groups to compare. */
    boolean isEmpty() {
        return rows.isEmpty();
    }

    FigureTable table() {
        if (rows.size() == 1 && alike.size() == 1) {
            notes.addAll(alike);
        } else if (!alike.isEmpty()) {
            notes.add(wording.of(notes.size() == 1 ? StudyWord.NONE_DIFFER : StudyWord.OTHERS_ALIKE));
        }
        return FigureTable.of(List.of(wording.of(StudyWord.GROUPS), wording.of(StudyWord.N), wording.of(AxisWord.WITHIN_HOUR),
                wording.of(AxisWord.FISHER)), rows, notes);
    }

    private void compare(Coins first, Coins second) {
        Axes one = Axes.of(first.axes());
        Axes other = Axes.of(second.axes());
        int near = one.withinAnHour();
        int nearOther = other.withinAnHour();
        double p = probability(near, one.n(), nearOther, other.n());
        rows.add(List.of(first.name() + " / " + second.name(), one.n() + ", " + other.n(), near + ", " + nearOther, wording.probability(p)));
        boolean stricter = (double) near / one.n() >= (double) nearOther / other.n();
        (p < LEVEL ? notes : alike).add(wording.of(p < LEVEL ? AxisWord.STRICTER : AxisWord.AS_STRICT, "first", (p >= LEVEL || stricter ? first : second).name(),
                "second", (p >= LEVEL || stricter ? second : first).name()));
    }

    /** Of so uneven a table or one less likely; 1 where one of its sums is nought. */
    static double probability(int near, int n, int nearOther, int nOther) {
        if (near + nearOther == 0 || near + nearOther == n + nOther) {
            return 1;
        }
        return Math.min(1, FisherExactTest.withDefaults().test(new int[][] {{near, n - near}, {nearOther, nOther - nearOther}}).getPValue());
    }
}
