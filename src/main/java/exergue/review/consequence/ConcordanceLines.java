package exergue.review.consequence;

import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.NaturalOrder;
import exergue.model.Reference;
import exergue.model.Type;
import exergue.model.Work;
import exergue.review.change.Consequence.Concordance;
import exergue.review.change.Subject;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Numbers in the works cited that lead to other coins than before, and are printed so; another catalogue number of the same coin is none. */
final class ConcordanceLines {

    private record Line(String work, String number) implements Comparable<Line> {

        @Override
        public int compareTo(Line other) {
            int byWork = NaturalOrder.INSTANCE.compare(work, other.work);
            return byWork != 0 ? byWork : NaturalOrder.INSTANCE.compare(number, other.number);
        }
    }

    private ConcordanceLines() { }

    static List<Concordance> of(TwoStates states) {
        Map<Line, Set<String>> old = lines(states.before());
        Map<Line, Set<String>> now = lines(states.after());
        TreeSet<Line> changed = new TreeSet<>();
        Stream.of(old, now).flatMap(lines -> lines.keySet().stream()).filter(line -> !states.sameCoins(
                old.getOrDefault(line, Set.of()), now.getOrDefault(line, Set.of()))).forEach(changed::add);
        return changed.stream().map(line -> new Concordance(sign(line.work(), states), line.number(),
                states.oldCoins(old.getOrDefault(line, Set.of())), states.newCoins(now.getOrDefault(line, Set.of()))))
                .filter(line -> !numbers(line.before()).equals(numbers(line.after()))).toList();
    }

    /** All that the line prints: where it stays as it was, there is nothing to be seen. */
    private static List<Optional<Integer>> numbers(List<Subject> coins) {
        return coins.stream().map(Subject::number).toList();
    }

    private static Map<Line, Set<String>> lines(Catalogue catalogue) {
        Map<Line, Set<String>> lines = new LinkedHashMap<>();
        Map<String, Type> types = new HashMap<>();
        catalogue.types().forEach(type -> types.put(type.id().value(), type));
        for (Coin coin : catalogue.coins()) {
            List<Reference> references = new ArrayList<>(coin.references());
            if (types.containsKey(coin.type().value())) {
                references.addAll(types.get(coin.type().value()).references());
            }
            references.stream().filter(reference -> reference.relation() != Reference.Relation.NOT_IN).forEach(reference ->
                    lines.computeIfAbsent(new Line(reference.work().value(), reference.number().value()), any -> new LinkedHashSet<>())
                            .add(coin.id().value()));
        }
        return lines;
    }

    private static String sign(String id, TwoStates states) {
        Work work = states.after().works().getOrDefault(id, states.before().works().get(id));
        return work == null ? id : work.sign().value();
    }
}
