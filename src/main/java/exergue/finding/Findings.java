package exergue.finding;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** All findings of one run: sorted by file, line and column, without doubles. Immutable. */
public final class Findings {

    private static final Findings NONE = new Findings(List.of());

    private final List<Finding> sorted;

    private Findings(List<Finding> sorted) {
        this.sorted = sorted;
    }

    public static Findings none() {
        return NONE;
    }

    public static Findings of(Collection<Finding> findings) {
        return findings.isEmpty() ? NONE : new Findings(List.copyOf(new TreeSet<>(findings)));
    }

    public Findings and(Findings others) {
        if (others.sorted.isEmpty()) {
            return this;
        }
        List<Finding> both = new ArrayList<>(sorted);
        both.addAll(others.sorted);
        return of(both);
    }

    public List<Finding> all() {
        return sorted;
    }

    public boolean isEmpty() {
        return sorted.isEmpty();
    }

    public long count(Severity severity) {
        return sorted.stream().filter(f -> f.severity() == severity).count();
    }

    public boolean hasErrors() {
        return sorted.stream().anyMatch(f -> f.severity() == Severity.ERROR);
    }

    public Optional<Severity> worst() {
        return sorted.stream().map(Finding::severity).min(Enum::compareTo);
    }
}
