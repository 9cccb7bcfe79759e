package exergue.study.match;

import exergue.model.Catalogue;
import exergue.model.ReadingChoice;
import exergue.model.Type;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Fresh readings held against the entries of a catalogue.
 *
 * @param matches   one for each fresh coin, in their order
 * @param exchanged coins whose tickets were changed round, two or more in a ring: the first bears the ticket of the second, and
 *                  so on, and the last that of the first
 */
public record Matching(List<Match> matches, List<List<Match>> exchanged) {

    public Matching {
        matches = List.copyOf(matches);
        exchanged = exchanged.stream().map(List::copyOf).toList();
    }

    /** Coins of types that are not declared are not looked at. */
    public static Matching of(Catalogue catalogue, List<FreshCoin> fresh) {
        Map<String, Type> types = new HashMap<>();
        catalogue.types().forEach(type -> types.putIfAbsent(type.id().value(), type));
        ReadingChoice choice = ReadingChoice.of(catalogue.style());
        List<Entry> entries = catalogue.coins().stream().filter(coin -> types.containsKey(coin.type().value()))
                .map(coin -> new Entry(coin, types.get(coin.type().value()), choice)).toList();
        Evidence evidence = new Evidence(entries, HandErrors.of(catalogue));
        List<Match> matches = matches(fresh, evidence);
        return new Matching(matches, exchanged(matches));
    }

    private static List<Match> matches(List<FreshCoin> fresh, Evidence evidence) {
        double[][] gains = new double[fresh.size()][];
        for (int i = 0; i < gains.length; i++) {
            gains[i] = evidence.gains(fresh.get(i));
        }
        int[] worth = worthWhile(gains);
        Assignment assignment = Assignment.of(only(worth, gains));
        List<Match> matches = new ArrayList<>();
        for (int i = 0; i < gains.length; i++) {
            int column = assignment.column(i);
            Optional<String> coin = column == Assignment.NONE ? Optional.empty() : Optional.of(evidence.entries().get(worth[column]).id());
            Sureness sureness = coin.isEmpty() ? Sureness.NO_ENTRY : Sureness.of(assignment.margin(i));
            matches.add(new Match(fresh.get(i), coin, sureness, evidence.candidates(fresh.get(i), gains[i])));
        }
        return matches;
    }

    /** Entries that fit no fresh coin better than going without need not be weighed. */
    private static int[] worthWhile(double[][] gains) {
        Set<Integer> worth = new TreeSet<>();
        for (double[] row : gains) {
            for (int column = 0; column < row.length; column++) {
                if (row[column] > 0) {
                    worth.add(column);
                }
            }
        }
        return worth.stream().mapToInt(Integer::intValue).toArray();
    }

    private static double[][] only(int[] columns, double[][] gains) {
        double[][] kept = new double[gains.length][columns.length];
        for (int row = 0; row < gains.length; row++) {
            for (int column = 0; column < columns.length; column++) {
                kept[row][column] = gains[row][columns[column]];
            }
        }
        return kept;
    }

    /** Rings of tickets: each bears the ticket of the coin that the next one is. */
    private static List<List<Match>> exchanged(List<Match> matches) {
        Map<String, Match> byCoin = new HashMap<>();
        matches.stream().filter(Match::againstItsTicket).forEach(match -> byCoin.put(match.coin().orElseThrow(), match));
        List<List<Match>> rings = new ArrayList<>();
        Set<Match> seen = new HashSet<>();
        for (Match first : matches) {
            List<Match> ring = new ArrayList<>();
            Match next = first.againstItsTicket() ? first : null;
            while (next != null && seen.add(next)) {
                ring.add(next);
                next = byCoin.get(next.fresh().ticket().orElseThrow().value());
            }
            if (ring.size() > 1 && next == first) {
                rings.add(ring);
            }
        }
        return rings;
    }
}
