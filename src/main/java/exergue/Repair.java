package exergue;

import exergue.files.MemoryTree;
import exergue.files.OverlaidTree;
import exergue.files.Tree;
import exergue.finding.Finding;
import exergue.finding.Finding.SafeEdit;
import exergue.finding.Findings;
import exergue.finding.Severity;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Makes the safe edits that findings carry, and nothing else: whatever stands between them stays as it is saved. One edit can
 * let another be seen, so the source is checked again until none is left; a file that had more errors afterwards than
 * before is left as it was. Findings that an entry excuses, or the house has turned off, are not mended.
 */
public final class Repair {

    /** A repair never needs more than two or three. */
    private static final int MOST_ROUNDS = 5;

    private final Tree source;
    private final Checking checking;
    private final Map<String, byte[]> files = new TreeMap<>();
    private final Map<String, Map<Integer, SortedSet<String>>> codes = new TreeMap<>();
    private final Set<String> leftAlone = new HashSet<>();

    private Repair(Tree source, Checking checking) {
        this.source = source;
        this.checking = checking;
    }

    /** How findings come about. */
    @FunctionalInterface
    public interface Checking {
        Findings findings(Tree tree) throws IOException;
    }

    /**
     * One line that is written otherwise.
     *
     * @param line from 1
     * @param codes of what is mended
     */
    public record Change(String file, int line, String before, String after, List<String> codes) {
        public Change {
            codes = List.copyOf(codes);
        }
    }

    /** @param files those with changes, whole; @param changes sorted by file and line */
    public record Repaired(Map<String, byte[]> files, List<Change> changes) {
        public Repaired {
            files = Collections.unmodifiableMap(new TreeMap<>(files));
            changes = List.copyOf(changes);
        }
    }

    /** What the source would be; nothing is written. */
    public static Repaired of(Tree source, Checking checking) throws IOException {
        Repair repair = new Repair(source, checking);
        Findings before = checking.findings(source);
        for (int round = 0; round < MOST_ROUNDS && repair.edit(before); round++) {
            Findings after = checking.findings(repair.now());
            if (repair.takeBack(before, after)) {
                after = checking.findings(repair.now());
            }
            before = after;
        }
        return new Repaired(repair.files, repair.changes());
    }

    private Tree now() {
        return new OverlaidTree(source, new MemoryTree(files));
    }

    /** False where nothing was left to do. */
    private boolean edit(Findings findings) throws IOException {
        Map<String, Map<Integer, List<Finding>>> wanted = new TreeMap<>();
        for (Finding finding : findings.all()) {
            finding.edit().map(SafeEdit::place).filter(place -> place.line() > 0 && !leftAlone.contains(place.file()))
                    .ifPresent(place -> wanted.computeIfAbsent(place.file(), any -> new TreeMap<>())
                            .computeIfAbsent(place.line(), any -> new ArrayList<>()).add(finding));
        }
        boolean changed = false;
        for (Map.Entry<String, Map<Integer, List<Finding>>> file : wanted.entrySet()) {
            changed |= edit(file.getKey(), file.getValue());
        }
        return changed;
    }

    private boolean edit(String file, Map<Integer, List<Finding>> wanted) throws IOException {
        RawLines lines = new RawLines(now().read(file));
        boolean changed = false;
        for (Map.Entry<Integer, List<Finding>> line : wanted.entrySet()) {
            String before = lines.line(line.getKey());
            List<SafeEdit> made = lines.edit(line.getKey(), line.getValue().stream().map(finding -> finding.edit().orElseThrow()).toList());
            if (!before.equals(lines.line(line.getKey()))) {
                changed = true;
                line.getValue().stream().filter(finding -> made.contains(finding.edit().orElseThrow())).forEach(finding ->
                        codes.computeIfAbsent(file, any -> new HashMap<>()).computeIfAbsent(line.getKey(), any -> new TreeSet<>())
                                .add(finding.code().id()));
            }
        }
        if (changed) {
            files.put(file, lines.bytes());
        }
        return changed;
    }

    /** Takes back what has made a file worse; false where nothing has. */
    private boolean takeBack(Findings before, Findings after) {
        Set<String> worse = new HashSet<>();
        for (String file : files.keySet()) {
            if (errors(after, file) > errors(before, file)) {
                worse.add(file);
            }
        }
        files.keySet().removeAll(worse);
        leftAlone.addAll(worse);
        return !worse.isEmpty();
    }

    private static long errors(Findings findings, String file) {
        return findings.all().stream().filter(one -> one.severity() == Severity.ERROR && one.place().file().equals(file)).count();
    }

    private List<Change> changes() throws IOException {
        List<Change> changes = new ArrayList<>();
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            RawLines before = new RawLines(source.read(file.getKey()));
            RawLines after = new RawLines(file.getValue());
            for (int line = 1; line <= before.count(); line++) {
                if (!before.line(line).equals(after.line(line))) {
                    changes.add(new Change(file.getKey(), line, before.line(line), after.line(line),
                            List.copyOf(codes.get(file.getKey()).get(line))));
                }
            }
        }
        return changes;
    }
}
