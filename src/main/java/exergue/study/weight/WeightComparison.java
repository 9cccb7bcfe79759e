package exergue.study.weight;

import exergue.model.StudyWord;
import exergue.study.Summary;
import exergue.study.figure.FigureTable;
import exergue.study.figure.Request;
import exergue.study.figure.Wording;
import exergue.study.group.Coins;
import exergue.study.statistic.DistributionTest;
import exergue.study.statistic.RankTest;
import java.util.ArrayList;
import java.util.List;

/** Every two groups compared by their weights: two tests, the size of the difference, and what both come to in plain words. */
final class WeightComparison {

    /** Below this a difference is spoken of; the usual level, no source. */
    private static final double LEVEL = 0.05;
    /** With fewer coins in either group no difference could reach that level. */
    private static final int FEWEST = 4;

    private final Wording wording;
    private final List<Coins> groups;
    private final List<List<String>> rows = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final List<String> alike = new ArrayList<>();

    WeightComparison(Request request) {
        this.wording = request.wording();
        this.groups = request.groups().stream().filter(group -> group.weights().length > 0).toList();
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
        notes.add(0, wording.of(StudyWord.COMPARISON_NOTE));
        if (rows.size() == 1 && alike.size() == 1) {
            notes.addAll(alike);
        } else if (!alike.isEmpty()) {
            notes.add(wording.of(notes.size() == 1 ? StudyWord.NONE_DIFFER : StudyWord.OTHERS_ALIKE));
        }
        return FigureTable.of(List.of(wording.of(StudyWord.GROUPS), wording.of(StudyWord.N), wording.of(StudyWord.MEDIAN_DIFFERENCE),
                "U", "p", wording.of(StudyWord.SHARE), "D", "p"), rows, notes);
    }

    private void compare(Coins first, Coins second) {
        double[] one = first.weights();
        double[] other = second.weights();
        int d = Math.max(WeightPlaces.of(first, wording.form()), WeightPlaces.of(second, wording.form()));
        RankTest ranks = RankTest.of(one, other);
        DistributionTest distribution = DistributionTest.of(one, other);
        double difference = Summary.ofSorted(one).orElseThrow().median() - Summary.ofSorted(other).orElseThrow().median();
        rows.add(List.of(first.name() + " / " + second.name(), one.length + ", " + other.length, wording.signed(difference, d),
                wording.number(ranks.u(), ranks.u() == Math.rint(ranks.u()) ? 0 : 1) + (ranks.exact() ? "" : "*"),
                wording.probability(ranks.p()), wording.number(ranks.share(), 2),
                wording.number(distribution.d(), 2) + (distribution.exact() ? "" : "*"), wording.probability(distribution.p())));
        words(first, second, ranks, distribution);
    }

    /** Differences are told one by one, the rest in one sentence. */
    private void words(Coins first, Coins second, RankTest ranks, DistributionTest distribution) {
        boolean heavier = ranks.share() >= 0.5;
        String more = heavier ? first.name() : second.name();
        String less = heavier ? second.name() : first.name();
        if (Math.min(first.weights().length, second.weights().length) < FEWEST) {
            notes.add(filled(StudyWord.TOO_FEW_TO_COMPARE, more, less, ranks));
        } else if (ranks.p() < LEVEL) {
            notes.add(filled(StudyWord.HEAVIER, more, less, ranks));
        } else if (distribution.p() < LEVEL) {
            notes.add(filled(StudyWord.OTHERWISE_SPREAD, first.name(), second.name(), ranks));
        } else {
            alike.add(filled(StudyWord.NO_DIFFERENCE, first.name(), second.name(), ranks));
        }
    }

    private String filled(StudyWord sentence, String first, String second, RankTest ranks) {
        double share = Math.max(ranks.share(), 1 - ranks.share());
        return wording.of(sentence, "first", first, "second", second, "share", String.valueOf(Math.round(100 * share)));
    }
}
