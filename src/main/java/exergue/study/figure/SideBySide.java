package exergue.study.figure;

import exergue.model.StudyWord;
import exergue.model.Worded;
import exergue.study.group.Coins;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** A table of one statistic after the other for several groups: a column for each of a few groups, a row for each of many. */
public final class SideBySide {

    /** As many groups stand in columns. */
    private static final int COLUMNS = 4;

    private final Request request;

    public SideBySide(Request request) {
        this.request = request;
    }

    /** Whether the groups are so many that each has a row; there is room for a few statistics only then. */
    public boolean brief() {
        return request.groups().size() > COLUMNS;
    }

    /** @param statistics heads; @param figures of a group, one for each head */
    public FigureTable table(List<? extends Worded> statistics, Function<Coins, List<String>> figures, List<String> notes) {
        List<String> names = statistics.stream().map(request.wording()::of).toList();
        List<List<String>> lines = request.groups().stream().map(group -> with(group.name(), figures.apply(group))).toList();
        if (brief()) {
            return FigureTable.of(with(request.wording().of(StudyWord.GROUP), names), lines, notes);
        }
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            List<String> row = new ArrayList<>(List.of(names.get(i)));
            for (List<String> line : lines) {
                row.add(line.get(i + 1));
            }
            rows.add(row);
        }
        return FigureTable.of(with("", request.groups().stream().map(Coins::name).toList()), rows, notes);
    }

    private static List<String> with(String first, List<String> others) {
        List<String> all = new ArrayList<>(List.of(first));
        all.addAll(others);
        return all;
    }
}
