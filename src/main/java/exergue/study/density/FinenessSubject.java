package exergue.study.density;

import exergue.model.BookWord;
import exergue.model.StudyWord;
import exergue.study.Summary;
import exergue.study.figure.Exhibit;
import exergue.study.figure.FigureTable;
import exergue.study.figure.FigureTable.Cell;
import exergue.study.figure.Request;
import exergue.study.figure.Subject;
import exergue.study.figure.Wording;
import exergue.study.group.Coins;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The fineness of groups, from density. Whole per cents: two weighings support no more (E. R. Caley, Ohio Journal of Science 49,
 * 1949, 73–81).
 */
public final class FinenessSubject implements Subject {

    @Override
    public String word() {
        return "fineness";
    }

    @Override
    public List<String> forms() {
        return List.of("table", "coins");
    }

    @Override
    public Optional<Exhibit> show(String form, Request request) {
        List<AlloyGroup> groups = request.groups().stream().flatMap(group -> AlloyGroup.of(group).stream()).toList();
        if (groups.isEmpty()) {
            return Optional.empty();
        }
        Wording wording = request.wording();
        return Optional.of(switch (form) {
            case "table" -> table(groups, wording);
            case "coins" -> coins(groups, wording);
            default -> throw new IllegalArgumentException(form);
        });
    }

    private static FigureTable table(List<AlloyGroup> groups, Wording wording) {
        List<List<Cell>> rows = new ArrayList<>();
        for (AlloyGroup group : groups) {
            Optional<Summary> shares = group.shares();
            rows.add(cells(List.of(group.group().name(), metals(group, wording), String.valueOf(group.coins().size()),
                    shares.map(s -> percent(s.mean(), wording)).orElse(Wording.NONE),
                    shares.filter(s -> s.sd().isPresent()).map(s -> percent(s.sd().getAsDouble(), wording)).orElse(Wording.NONE),
                    shares.map(s -> percent(s.least(), wording) + "–" + percent(s.greatest(), wording)).orElse(Wording.NONE),
                    group.coins().isEmpty() ? Wording.NONE : "±\u00A0" + atLeastOne(group.error(), wording), String.valueOf(group.beyond()))));
        }
        return new FigureTable(List.of("left", "left", "right", "right", "right", "right", "right", "right"),
                heads(wording, StudyWord.GROUP, StudyWord.ALLOY, StudyWord.N, StudyWord.MEAN, StudyWord.SD, StudyWord.SPAN, StudyWord.READING_ERROR,
                        StudyWord.BEYOND_ALLOY), rows, List.of(wording.of(StudyWord.FINENESS_NOTE)));
    }

    private static FigureTable coins(List<AlloyGroup> groups, Wording wording) {
        List<List<Cell>> rows = new ArrayList<>();
        for (AlloyGroup group : groups) {
            for (AlloyGroup.Fine coin : group.coins()) {
                rows.add(List.of(new Cell("", List.of(coin.coin())), Cell.of(wording.number(coin.density(), 2)), Cell.of(metals(group, wording)),
                        Cell.of(coin.fineness().percent())));
            }
        }
        return new FigureTable(List.of("right", "right", "left", "right"), List.of(Cell.of(BookWord.NUMBER_HEAD.in(wording.language())),
                Cell.of(wording.of(StudyWord.DENSITY)), Cell.of(wording.of(StudyWord.ALLOY)), Cell.of(wording.of(StudyWord.FINENESS))), rows,
                List.of(wording.of(StudyWord.FINENESS_NOTE)));
    }

    /** "gold, silver": that whose share is given first. */
    private static String metals(AlloyGroup group, Wording wording) {
        return BookWord.metal(group.alloy().heavier()).in(wording.language()) + ", " + BookWord.metal(group.alloy().lighter()).in(wording.language());
    }

    private static String percent(double share, Wording wording) {
        return wording.number(100 * share, 0);
    }

    /** Never "± 0": whole per cents are out by a half at best. */
    private static String atLeastOne(double share, Wording wording) {
        String percent = percent(share, wording);
        return percent.equals("0") ? "1" : percent;
    }

    private static List<Cell> cells(List<String> texts) {
        return texts.stream().map(Cell::of).toList();
    }

    private static List<Cell> heads(Wording wording, StudyWord... words) {
        return List.of(words).stream().map(word -> Cell.of(wording.of(word))).toList();
    }

    @Override
    public List<String> figures() {
        return List.of("coins with density", "mean fineness");
    }

    /** A group of more than one alloy has no mean. */
    @Override
    public String figure(String name, Coins coins, Wording wording) {
        List<AlloyGroup> groups = AlloyGroup.of(coins);
        if (name.equals("coins with density")) {
            return String.valueOf(coins.members().stream().filter(member -> member.density().isPresent()).count());
        }
        return groups.size() == 1 ? groups.get(0).shares().map(shares -> wording.with(percent(shares.mean(), wording), "%")).orElse(Wording.NONE)
                : Wording.NONE;
    }
}
