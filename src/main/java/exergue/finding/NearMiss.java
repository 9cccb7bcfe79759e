package exergue.finding;

import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** "Did you mean": the nearest known word to one that is not known. */
public final class NearMiss {

    private NearMiss() { }

    /** How a remedy begins where there is one: “Did you mean “x”? ”; else nothing. */
    public static String question(String word, Collection<String> known) {
        return of(word, known).map(near -> "Did you mean “" + near + "”? ").orElse("");
    }

    /** The nearest of {@code known}, if it is near enough to be a slip: about one wrong letter in three. */
    public static Optional<String> of(String word, Collection<String> known) {
        String nearest = null;
        int least = Integer.MAX_VALUE;
        for (String candidate : known) {
            int distance = distance(word.toLowerCase(java.util.Locale.ROOT), candidate.toLowerCase(java.util.Locale.ROOT));
            if (distance < least || distance == least && candidate.compareTo(nearest) < 0) {
                least = distance;
                nearest = candidate;
            }
        }
        int allowed = Math.max(1, word.length() / 3);
        return least <= allowed ? Optional.of(nearest) : Optional.empty();
    }

    /**
     * The one known word that can have been meant: it differs in capitals alone, or, in a word of five letters or more with the
     * same first letter, by one letter that is wrong, missing, doubled or exchanged with its neighbour, and no other does.
     */
    public static Optional<String> certain(String word, Collection<String> known) {
        if (word.isEmpty()) {
            return Optional.empty();
        }
        Optional<String> same = known.stream().filter(word::equalsIgnoreCase).findFirst();
        String small = word.toLowerCase(java.util.Locale.ROOT);
        List<String> near = small.length() < 5 || same.isPresent() ? List.of() : known.stream().distinct()
                .filter(one -> small.charAt(0) == Character.toLowerCase(one.charAt(0))
                        && distance(small, one.toLowerCase(java.util.Locale.ROOT)) == 1).toList();
        return near.size() == 1 ? Optional.of(near.get(0)) : same;
    }

    /** Letters to insert, drop, change or swap with their neighbour. */
    static int distance(String a, String b) {
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            cost[i][0] = i;
        }
        for (int j = 0; j <= b.length(); j++) {
            cost[0][j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                int best = Math.min(Math.min(cost[i - 1][j], cost[i][j - 1]) + 1, cost[i - 1][j - 1] + change);
                boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                cost[i][j] = swapped ? Math.min(best, cost[i - 2][j - 2] + 1) : best;
            }
        }
        return cost[a.length()][b.length()];
    }
}
