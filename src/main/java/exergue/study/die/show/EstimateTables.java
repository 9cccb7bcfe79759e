package exergue.study.die.show;

import exergue.model.DieWord;
import exergue.study.die.Caution;
import exergue.study.die.DieCounts;
import exergue.study.die.DieSide;
import exergue.study.die.DieStudy;
import exergue.study.die.Estimate;
import exergue.study.die.Estimator;
import exergue.study.figure.FigureTable;
import exergue.study.figure.FigureTable.Cell;
import java.util.ArrayList;
import java.util.List;

/** How many dies there were, by every estimator. */
final class EstimateTables {

    private final DieWords words;

    EstimateTables(DieWords words) {
        this.words = words;
    }

    /** Obverse and reverse dies of one group. */
    FigureTable one(DieStudy study) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Estimator estimator : Estimator.values()) {
            rows.add(cells(List.of(title(estimator), words.of(assumption(estimator)), dies(estimator, study.obverse()), dies(estimator, study.reverse()))));
        }
        List<String> notes = new ArrayList<>(List.of(words.of(DieWord.ESTIMATE_NOTE)));
        for (DieSide side : DieSide.values()) {
            notes.addAll(cautions(words.side(side), study.counts(side)));
        }
        return new FigureTable(List.of("left", "left", "right", "right"), cells(List.of(words.of(DieWord.ESTIMATE), words.of(DieWord.ASSUMES),
                words.of(DieWord.OBVERSE_DIES), words.of(DieWord.REVERSE_DIES))), rows, notes);
    }

    /** Obverse dies of several groups. */
    FigureTable several(List<String> names, List<DieStudy> studies) {
        List<String> head = new ArrayList<>(List.of(words.of(DieWord.GROUP), "n", "d"));
        for (Estimator estimator : Estimator.values()) {
            head.add(title(estimator));
        }
        List<List<String>> rows = new ArrayList<>();
        List<String> notes = new ArrayList<>(List.of(words.of(DieWord.OBVERSE_DIES) + ".", words.of(DieWord.ESTIMATE_NOTE)));
        for (int i = 0; i < studies.size(); i++) {
            DieCounts counts = studies.get(i).obverse();
            List<String> row = new ArrayList<>(List.of(names.get(i), String.valueOf(counts.coins()), String.valueOf(counts.dies())));
            for (Estimator estimator : Estimator.values()) {
                row.add(dies(estimator, counts));
            }
            rows.add(row);
            notes.addAll(cautions(names.get(i), counts));
        }
        return FigureTable.of(head, rows, notes);
    }

    private String dies(Estimator estimator, DieCounts counts) {
        Estimate estimate = estimator.of(counts);
        return words.dies(estimate.dies(), estimate.interval());
    }

    private List<String> cautions(String dies, DieCounts counts) {
        return Caution.of(counts).stream().map(caution -> switch (caution) {
            case NO_DIE_TWICE -> words.of(DieWord.NO_DIE_TWICE, "dies", dies);
            case FEWER_THAN_TWO_A_DIE -> words.of(DieWord.FEWER_THAN_TWO, "dies", dies, "ratio", words.ratio(CountTables.coinsToADie(counts)));
            case FEW_COINS -> words.of(DieWord.FEW_COINS, "dies", dies, "n", String.valueOf(counts.coins()));
        }).toList();
    }

    private String title(Estimator estimator) {
        return estimator == Estimator.EQUAL_DIES ? words.of(DieWord.EQUAL_DIES) : estimator.title();
    }

    private static DieWord assumption(Estimator estimator) {
        return switch (estimator) {
            case EQUAL_DIES -> DieWord.ASSUMES_EQUAL;
            case GOOD_1953 -> DieWord.ASSUMES_AVERAGE;
            case CARTER_1983 -> DieWord.ASSUMES_OBSERVED;
            case ESTY_2006 -> DieWord.ASSUMES_SHAPE_TWO;
            case ESTY_2011 -> DieWord.ASSUMES_GEOMETRIC;
            case CHAO_1984 -> DieWord.ASSUMES_NOTHING;
        };
    }

    static List<Cell> cells(List<String> texts) {
        return texts.stream().map(Cell::of).toList();
    }
}
