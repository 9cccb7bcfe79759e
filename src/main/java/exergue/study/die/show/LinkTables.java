package exergue.study.die.show;

import exergue.model.DieWord;
import exergue.study.die.Combination;
import exergue.study.die.Die;
import exergue.study.die.DieChain;
import exergue.study.die.DieStudy;
import exergue.study.die.DieUsage;
import exergue.study.figure.FigureTable;
import exergue.study.figure.FigureTable.Cell;
import exergue.study.figure.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Which dies were used with which. */
final class LinkTables {

    private final DieWords words;
    private final DieStudy study;

    LinkTables(DieWords words, DieStudy study) {
        this.words = words;
        this.study = study;
    }

    /** Every pair of dies with its coins, chain after chain, then the pairs that are not linked. What repeats is said once. */
    FigureTable combinations() {
        List<List<Cell>> rows = new ArrayList<>();
        for (int i = 0; i < study.chains().size(); i++) {
            List<Combination> pairs = study.chains().get(i).combinations();
            for (int j = 0; j < pairs.size(); j++) {
                boolean another = j == 0 || !pairs.get(j).pair().obverse().equals(pairs.get(j - 1).pair().obverse());
                rows.add(pair(j == 0 ? String.valueOf(i + 1) : "", another, pairs.get(j)));
            }
        }
        study.alone().forEach(pair -> rows.add(pair(Wording.NONE, true, pair)));
        return new FigureTable(List.of("left", "left", "left", "right", "left"), cells(DieWord.CHAIN, DieWord.OBVERSE, DieWord.REVERSE,
                DieWord.COINS, DieWord.NUMBERS), rows, List.of());
    }

    private List<Cell> pair(String chain, boolean another, Combination pair) {
        return List.of(Cell.of(chain), Cell.of(another ? words.name(pair.pair().obverse()) : ""), Cell.of(words.name(pair.pair().reverse())),
                Cell.of(String.valueOf(pair.coins().size())), new Cell("", pair.coins()));
    }

    /** A line for each obverse die with the reverses it was used with. */
    FigureTable links() {
        List<List<Cell>> rows = new ArrayList<>();
        for (int i = 0; i < study.chains().size(); i++) {
            add(String.valueOf(i + 1), study.chains().get(i).combinations(), rows);
        }
        study.alone().forEach(pair -> add(Wording.NONE, List.of(pair), rows));
        return new FigureTable(List.of("left", "left", "right", "left"), cells(DieWord.CHAIN, DieWord.OBVERSE, DieWord.COINS, DieWord.USED_WITH),
                rows, List.of());
    }

    private void add(String chain, List<Combination> pairs, List<List<Cell>> rows) {
        Map<Die, List<Combination>> byObverse = new LinkedHashMap<>();
        pairs.forEach(pair -> byObverse.computeIfAbsent(pair.pair().obverse(), any -> new ArrayList<>()).add(pair));
        byObverse.forEach((obverse, used) -> rows.add(List.of(Cell.of(obverse.equals(pairs.get(0).pair().obverse()) ? chain : ""), Cell.of(words.name(obverse)),
                Cell.of(String.valueOf(used.stream().mapToInt(pair -> pair.coins().size()).sum())),
                Cell.of(String.join(", ", used.stream().map(this::reverse).toList())))));
    }

    /** "R31", "R31 (2)" for two coins. */
    private String reverse(Combination pair) {
        String name = words.name(pair.pair().reverse());
        return pair.coins().size() == 1 ? name : words.of(DieWord.SEVERAL_COINS, "die", name, "n", String.valueOf(pair.coins().size()));
    }

    FigureTable chains() {
        List<List<Cell>> rows = new ArrayList<>();
        for (int i = 0; i < study.chains().size(); i++) {
            DieChain chain = study.chains().get(i);
            rows.add(EstimateTables.cells(List.of(String.valueOf(i + 1), words.names(chain.obverses()), words.names(chain.reverses()),
                    String.valueOf(chain.combinations().size()), String.valueOf(chain.coins()))));
        }
        if (!study.alone().isEmpty()) {
            rows.add(EstimateTables.cells(List.of(words.of(DieWord.NOT_LINKED),
                    words.names(study.alone().stream().map(pair -> pair.pair().obverse()).toList()),
                    words.names(study.alone().stream().map(pair -> pair.pair().reverse()).toList()), String.valueOf(study.alone().size()),
                    String.valueOf(study.alone().stream().mapToInt(pair -> pair.coins().size()).sum()))));
        }
        return new FigureTable(List.of("left", "left", "left", "right", "right"), cells(DieWord.CHAIN, DieWord.OBVERSE_DIES, DieWord.REVERSE_DIES,
                DieWord.PAIRS, DieWord.COINS), rows, List.of());
    }

    /** Dies of which more than one state is recorded. */
    FigureTable states() {
        List<List<Cell>> rows = new ArrayList<>();
        for (DieUsage usage : study.usage()) {
            for (DieUsage.State state : usage.states()) {
                rows.add(List.of(Cell.of(state.equals(usage.states().get(0)) ? words.name(usage.die()) : ""),
                        Cell.of(String.valueOf(state.number())), Cell.of(state.flaw().orElse(Wording.NONE)),
                        Cell.of(state.partners().isEmpty() ? Wording.NONE : words.names(state.partners())), new Cell("", state.coins())));
            }
        }
        List<String> notes = new ArrayList<>(List.of(words.of(DieWord.EARLIER_STATE_NOTE)));
        study.chains().stream().filter(chain -> !chain.contradicted().isEmpty())
                .forEach(chain -> notes.add(words.of(DieWord.STATES_DISAGREE, "dies", words.names(chain.contradicted()))));
        return new FigureTable(List.of("left", "right", "left", "left", "left"), cells(DieWord.DIE, DieWord.STATE, DieWord.KNOWN_BY,
                DieWord.USED_WITH, DieWord.NUMBERS), rows, notes);
    }

    private List<Cell> cells(DieWord... heads) {
        return List.of(heads).stream().map(head -> Cell.of(words.of(head))).toList();
    }
}
