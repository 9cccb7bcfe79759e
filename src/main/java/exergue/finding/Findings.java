package exergue.finding;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * All findings of one run: sorted by file, line and column, without doubles; and apart from them those that entries
 * excuse. Immutable.
 */
public final class Findings {

    private static final Findings NONE = new Findings(List.of(), List.of());

    private final List<Finding> sorted;
    private final List<Excused> excused;

    private Findings(List<Finding> sorted, List<Excused> excused) {
        this.sorted = sorted;
        this.excused = excused;
    }

    public static Findings none() {
        return NONE;
    }

    public static Findings of(Collection<Finding> findings) {
        return of(findings, List.of());
    }

    /** @param excused findings that are not among the others, each with the reason that an entry gives */
    public static Findings of(Collection<Finding> findings, Collection<Excused> excused) {
        return findings.isEmpty() && excused.isEmpty() ? NONE
                : new Findings(List.copyOf(new TreeSet<>(findings)), List.copyOf(new TreeSet<>(excused)));
    }

    public Findings and(Findings others) {
        if (others == NONE) {
            return this;
        }
        List<Finding> both = new ArrayList<>(sorted);
        both.addAll(others.sorted);
        List<Excused> reasons = new ArrayList<>(excused);
        reasons.addAll(others.excused);
        return of(both, reasons);
    }

    public List<Finding> all() {
        return sorted;
    }

    /** What entries excuse, in the order of the findings. */
    public List<Excused> excused() {
        return excused;
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
