package exergue.review.change;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * Everything in which one catalogue differs from another.
 *
 * @param entries      in order of section, number and id
 * @param kinships     entries that were split, joined or exchanged; they are among the entries as well
 */
public record Changes(List<EntryChange> entries, List<Kinship> kinships) {

    public Changes {
        List<EntryChange> sorted = new ArrayList<>(entries);
        Collections.sort(sorted, Comparator.comparing(EntryChange::subject).thenComparing(Changes::goneLast));
        entries = List.copyOf(sorted);
        kinships = List.copyOf(kinships);
    }

    /** A coin that is gone and one that is new can have the same number. */
    private static boolean goneLast(EntryChange change) {
        return change instanceof EntryChange.TakenOut;
    }

    /** The changes that lead back. */
    public Changes reversed() {
        return new Changes(entries.stream().map(EntryChange::reversed).toList(),
                kinships.stream().map(Kinship::reversed).toList());
    }

    public boolean isEmpty() {
        return entries.isEmpty();
    }
}
