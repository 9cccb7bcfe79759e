package exergue.review.differ;

import exergue.model.Coin;
import exergue.model.NaturalOrder;
import exergue.review.content.Facts;
import exergue.review.content.Field;
import exergue.review.content.Said;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;

/**
 * Entries of two catalogues that are likely one and the same under two ids: the same number in the same collection or of
 * the same find; or all but a few of their fields alike.
 */
final class Kin {

    /** Share of the fields of either that both must have alike. A choice, no source. */
    private static final double NEAR = 0.8;

    /** What more entries than this have alike tells none of them from the others. */
    private static final int TELLING = 20;

    private static final double CERTAIN = 2;

    /** @param likeness 0 to 1 by their fields, and more by a number that only one coin can have */
    record Pair(String before, String after, double likeness) {

        /** The same from either side. */
        private String first() {
            return NaturalOrder.INSTANCE.compare(before, after) < 0 ? before : after;
        }
    }

    private static final Comparator<Pair> LIKELIEST = Comparator.comparingDouble(Pair::likeness).reversed()
            .thenComparing(Pair::first, NaturalOrder.INSTANCE)
            .thenComparing(pair -> pair.first().equals(pair.before()) ? pair.after() : pair.before(), NaturalOrder.INSTANCE);

    private final Map<String, SortedMap<Field, Said>> before = new LinkedHashMap<>();
    private final Map<String, SortedMap<Field, Said>> after = new LinkedHashMap<>();
    private final Map<String, Object> old;
    private final Map<String, Object> now;

    private Kin(Map<String, Object> old, Map<String, Object> now) {
        this.old = old;
        this.now = now;
        old.forEach((id, entry) -> before.put(id, Facts.of(entry)));
        now.forEach((id, entry) -> after.put(id, Facts.of(entry)));
    }

    /** All pairs that are near enough, the likeliest first. */
    static List<Pair> pairs(Map<String, Object> old, Map<String, Object> now) {
        if (old.isEmpty() || now.isEmpty()) {
            return List.of();
        }
        return new Kin(old, now).pairs();
    }

    /** Each entry in at most one pair: what was renamed, from the old id to the new. */
    static Map<String, String> renamed(Map<String, Object> old, Map<String, Object> now) {
        Map<String, String> renamed = new LinkedHashMap<>();
        Set<String> taken = new HashSet<>();
        for (Pair pair : pairs(old, now)) {
            if (!renamed.containsKey(pair.before()) && taken.add(pair.after())) {
                renamed.put(pair.before(), pair.after());
            }
        }
        return renamed;
    }

    private List<Pair> pairs() {
        Map<String, List<String>> having = having(before);
        Map<String, List<String>> alsoHaving = having(after);
        List<Pair> pairs = new ArrayList<>();
        after.forEach((id, facts) -> {
            Set<String> candidates = new TreeSet<>();
            facts.forEach((field, said) -> {
                String key = key(field, said);
                List<String> same = having.getOrDefault(key, List.of());
                if (same.size() <= TELLING && alsoHaving.get(key).size() <= TELLING) {
                    candidates.addAll(same);
                }
            });
            candidates.forEach(candidate -> pairs.add(new Pair(candidate, id, likeness(candidate, id))));
        });
        pairs.removeIf(pair -> pair.likeness() < NEAR);
        pairs.sort(LIKELIEST);
        return pairs;
    }

    private static Map<String, List<String>> having(Map<String, SortedMap<Field, Said>> entries) {
        Map<String, List<String>> having = new LinkedHashMap<>();
        entries.forEach((id, facts) -> facts.forEach((field, said) ->
                having.computeIfAbsent(key(field, said), any -> new ArrayList<>()).add(id)));
        return having;
    }

    private static String key(Field field, Said said) {
        return field + " = " + said.meaning();
    }

    private double likeness(String oldId, String newId) {
        SortedMap<Field, Said> was = before.get(oldId);
        SortedMap<Field, Said> is = after.get(newId);
        long alike = was.entrySet().stream().filter(fact -> is.containsKey(fact.getKey())
                && is.get(fact.getKey()).saysTheSameAs(fact.getValue())).count();
        double share = alike / (double) (was.size() + is.size() - alike);
        return sameNumber(old.get(oldId), now.get(newId)) ? CERTAIN + share : share;
    }

    private static boolean sameNumber(Object one, Object other) {
        return one instanceof Coin a && other instanceof Coin b
                && (numberInCollection(a).equals(numberInCollection(b)) && !numberInCollection(a).isEmpty()
                || findNumber(a).equals(findNumber(b)) && !findNumber(a).isEmpty());
    }

    private static String numberInCollection(Coin coin) {
        return coin.holding().flatMap(holding -> holding.number().map(number -> holding.collection().value() + " " + number.value()))
                .orElse("");
    }

    private static String findNumber(Coin coin) {
        return coin.find().flatMap(find -> find.number().map(number -> find.spot().value() + " " + number.value())).orElse("");
    }
}
