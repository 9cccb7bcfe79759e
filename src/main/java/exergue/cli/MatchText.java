package exergue.cli;

import exergue.study.match.Match;
import exergue.study.match.MatchRow;
import exergue.study.match.Sureness;
import java.util.ArrayList;
import java.util.List;

/** What fresh coins are, for a screen. */
final class MatchText {

    private MatchText() { }

    /** A line for the heads, one for each coin, and further candidates below it. */
    static String of(List<MatchRow> rows) {
        List<List<String>> lines = new ArrayList<>();
        lines.add(MatchRow.HEAD);
        for (MatchRow row : rows) {
            for (int i = 0; i < row.candidates().size(); i++) {
                lines.add(i > 0 ? List.of("", "", "", "", row.candidates().get(i))
                        : List.of(row.label(), row.ticket(), row.coin(), row.sureness(), row.candidates().get(0)));
            }
        }
        return TextTable.of(lines);
    }

    /** "The tickets of “tray 3” (ark-004) and “tray 9” (ark-011) look changed round." */
    static String exchanged(List<Match> ring) {
        List<String> named = ring.stream().map(match -> "“" + match.fresh().label() + "” (ticket " + match.fresh().ticket().orElseThrow()
                + ", coin " + match.coin().orElseThrow() + ", " + match.sureness().words() + ")").toList();
        return "Tickets that look changed round: " + String.join(", ", named) + ".";
    }

    /** "145 coins: 113 sure, 20 likely, 12 open." */
    static String sum(List<Sureness> all) {
        List<String> counts = new ArrayList<>();
        for (Sureness sureness : Sureness.values()) {
            long count = all.stream().filter(one -> one == sureness).count();
            if (count > 0) {
                counts.add(count + " " + sureness.words());
            }
        }
        return HowMany.count(all.size(), "coin") + ": " + String.join(", ", counts) + ". A coin is sure if any other answer is less than a "
                + "hundredth as probable, likely if less than a tenth. Look at the coins before you write new tickets.";
    }
}
