package exergue.edition;

import exergue.model.BookPlan;
import exergue.model.Chapter;
import exergue.model.Prose;
import exergue.model.Written;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The prose of every part of the plan, made before anything refers to it: only once all of it is there does a table
 * have a number.
 *
 * @param byName blocks by the name of the part; none for parts that are not prose
 */
record ProseParts(Map<String, List<Prose>> byName) {

    ProseParts {
        byName = Collections.unmodifiableMap(new LinkedHashMap<>(byName));
    }

    /** @param prose of a part as it comes from its maker, empty for one that is not prose */
    static ProseParts of(BookPlan plan, CaptionNumbers numbers, Function<Written<String>, List<Prose>> prose) {
        Map<String, List<Prose>> byName = new LinkedHashMap<>();
        Stream.of(plan.front(), plan.body(), plan.back()).flatMap(List::stream)
                .filter(name -> !byName.containsKey(name.value()))
                .forEach(name -> byName.put(name.value(), numbers.in(prose.apply(name))));
        return new ProseParts(byName);
    }

    /** All that the parts show, in the order of the book. */
    List<Prose.Picture> pictures() {
        return byName.values().stream().flatMap(Chapter::pictures).toList();
    }

    List<Prose> of(String name) {
        return byName.getOrDefault(name, List.of());
    }
}
