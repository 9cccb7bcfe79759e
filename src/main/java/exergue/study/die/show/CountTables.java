package exergue.study.die.show;

import exergue.model.DieWord;
import exergue.study.die.Coverage;
import exergue.study.die.DieCounts;
import exergue.study.die.DieSide;
import exergue.study.die.DieStudy;
import exergue.study.figure.FigureTable;
import exergue.study.figure.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;

/** How many coins and dies there are, and how much of the coinage they represent. */
final class CountTables {

    private static final int LARGE = 4;

    private final DieWords words;

    CountTables(DieWords words) {
        this.words = words;
    }

    /** Obverse and reverse dies of one group. */
    FigureTable one(DieStudy study) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(row(DieWord.COINS_WITH_DIE, study, counts -> String.valueOf(counts.coins())));
        rows.add(row(DieWord.DIFFERENT_DIES, study, counts -> String.valueOf(counts.dies())));
        rows.add(row(DieWord.OF_ONE_COIN, study, counts -> String.valueOf(counts.singles())));
        rows.add(row(DieWord.OF_TWO_COINS, study, counts -> String.valueOf(counts.pairs())));
        rows.add(row(DieWord.OF_THREE_COINS, study, counts -> String.valueOf(counts.diesByCoins().getOrDefault(LARGE - 1, 0))));
        rows.add(row(DieWord.OF_MORE_COINS, study,
                counts -> String.valueOf(counts.diesByCoins().tailMap(LARGE).values().stream().mapToInt(Integer::intValue).sum())));
        rows.add(row(DieWord.COINS_TO_A_DIE, study, counts -> words.ratio(coinsToADie(counts))));
        rows.add(row(DieWord.COVERAGE, study, this::coverage));
        rows.add(row(DieWord.COVERAGE_INTERVAL, study, counts -> Coverage.of(counts).flatMap(Coverage::interval).map(words::percent)
                .orElse(Wording.NONE)));
        rows.add(List.of(words.of(DieWord.REVERSES_TO_OBVERSE), words.ratio(study.reversesToObverse()), ""));
        return FigureTable.of(List.of("", words.of(DieWord.OBVERSE), words.of(DieWord.REVERSE)), rows, List.of(words.of(DieWord.COVERAGE_NOTE)));
    }

    private List<String> row(DieWord head, DieStudy study, Function<DieCounts, String> figure) {
        return List.of(words.of(head), figure.apply(study.obverse()), figure.apply(study.reverse()));
    }

    String coverage(DieCounts counts) {
        return Coverage.of(counts).map(coverage -> words.percent(coverage.share())).orElse(Wording.NONE);
    }

    static OptionalDouble coinsToADie(DieCounts counts) {
        return counts.dies() == 0 ? OptionalDouble.empty() : OptionalDouble.of((double) counts.coins() / counts.dies());
    }

    /** A row for each of several groups. */
    FigureTable several(List<String> names, List<DieStudy> studies) {
        List<String> head = List.of(words.of(DieWord.GROUP), words.of(DieWord.COINS_WITH_DIE), words.of(DieWord.OBVERSE_DIES),
                words.of(DieWord.REVERSE_DIES), words.of(DieWord.REVERSES_TO_OBVERSE), words.of(DieWord.COVERAGE));
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < studies.size(); i++) {
            DieStudy study = studies.get(i);
            rows.add(List.of(names.get(i), String.valueOf(study.obverse().coins()), String.valueOf(study.obverse().dies()),
                    String.valueOf(study.reverse().dies()), words.ratio(study.reversesToObverse()), coverage(study.obverse())));
        }
        return FigureTable.of(head, rows, List.of(words.of(DieWord.COVERAGE_NOTE)));
    }

    /** Singles, pairs, triples: how many dies are known from how many coins. */
    FigureTable frequencies(DieStudy study) {
        SortedSet<Integer> coins = new TreeSet<>(study.obverse().diesByCoins().keySet());
        coins.addAll(study.reverse().diesByCoins().keySet());
        List<List<String>> rows = coins.stream().map(number -> List.of(String.valueOf(number), dies(study, DieSide.OBVERSE, number),
                dies(study, DieSide.REVERSE, number))).toList();
        return FigureTable.of(List.of(words.of(DieWord.COINS_OF_A_DIE), words.of(DieWord.OBVERSE_DIES), words.of(DieWord.REVERSE_DIES)),
                rows, List.of());
    }

    private static String dies(DieStudy study, DieSide side, int coins) {
        return String.valueOf(study.counts(side).diesByCoins().getOrDefault(coins, 0));
    }
}
