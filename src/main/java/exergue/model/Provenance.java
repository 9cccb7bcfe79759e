package exergue.model;

import exergue.dating.Dating;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One step in the history of a coin: an owner, a sale, a gift.
 *
 * @param words as printed
 * @param date  when; empty where the entry does not say
 * @param under what the index has it under: "Harrowgill cabinet"; empty where it is not indexed
 */
public record Provenance(Written<String> words, Optional<Written<Dating>> date, Optional<Written<String>> under) {

    private static final Comparator<Provenance> BY_DATE = Comparator
            .comparing(step -> step.date().orElseThrow().value(), Dating.BY_DATE);

    /** What the entry has where it gives words alone. */
    public static Provenance of(Written<String> words) {
        return new Provenance(words, Optional.empty(), Optional.empty());
    }

    /**
     * In order of date, spans by their beginning. A step without a date stays behind the step that it is written after;
     * those before the first date stay at the head.
     */
    public static List<Provenance> inOrder(List<Provenance> steps) {
        List<Provenance> ordered = new ArrayList<>();
        List<List<Provenance>> dated = new ArrayList<>();
        for (Provenance step : steps) {
            if (step.date().isPresent()) {
                dated.add(new ArrayList<>(List.of(step)));
            } else if (dated.isEmpty()) {
                ordered.add(step);
            } else {
                dated.get(dated.size() - 1).add(step);
            }
        }
        dated.sort(Comparator.comparing(group -> group.get(0), BY_DATE));
        dated.forEach(ordered::addAll);
        return List.copyOf(ordered);
    }
}
