package exergue;

import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.finding.Severity;
import exergue.source.Loaded;
import exergue.source.works.WorksReader;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * One file that cannot be read would show in many others: every coin names a convention that seems not to be declared, and
 * mints seem to be used by nobody. The fault that is to be mended is that of the one file, so what only follows from it
 * is left unsaid until the file can be read.
 */
final class Unread {

    /** Files in which single works may be lost. */
    private static final List<String> REFERENCE_MANAGERS = List.of(WorksReader.JSON, WorksReader.BIB);
    private static final List<String> CONVENTIONS = List.of("conventions.yaml");
    private static final List<String> HOUSE = List.of("house-style.yaml");

    /** By the code of what is found missing: the files in which it may stand. */
    private static final Map<String, List<String>> MAY_STAND_IN = Map.ofEntries(
            Map.entry("unknown-mint", List.of("mints.yaml")), Map.entry("unknown-ruler", List.of("rulers.yaml")),
            Map.entry("unknown-find-spot", List.of("find-spots.yaml")), Map.entry("unknown-collection", List.of("collections.yaml")),
            Map.entry("unknown-metal", HOUSE), Map.entry("unknown-era", HOUSE), Map.entry("other-word-wanted", HOUSE),
            Map.entry("unknown-work", WorksReader.FILES), Map.entry("work-without-sign", WorksReader.FILES),
            Map.entry("no-standard-work", WorksReader.FILES), Map.entry("work-not-listed", WorksReader.FILES),
            Map.entry("undeclared-convention", CONVENTIONS));

    /** What a figure means hangs on its convention. */
    private static final List<String> READINGS = List.of("measured", "also-measured");

    /** What is found because nothing names it, because the coins are counted, or because the type of a coin says nothing. */
    private static final Set<String> FOR_WANT_OF_OTHERS = Set.of("convention-never-used", "collection-never-used",
            "find-spot-never-used", "mint-never-used", "ruler-never-used", "type-without-coins", "work-never-cited",
            "group-value-of-no-coin", "picture-not-shown", "see-leads-nowhere", "count-contradicted", "count-not-borne-out",
            "required-by-house", "excuse-without-cause", "broken-cross-reference");

    private final Set<String> files;

    private Unread(Set<String> files) {
        this.files = files;
    }

    static Unread of(Loaded loaded) {
        Set<String> files = new HashSet<>(loaded.unread());
        loaded.findings().all().stream().filter(finding -> finding.severity() == Severity.ERROR)
                .map(finding -> finding.place().file()).filter(REFERENCE_MANAGERS::contains).forEach(files::add);
        return new Unread(files);
    }

    /** What reading has found, without what only follows. */
    Findings ofReading(Findings findings) {
        return files.isEmpty() ? findings : kept(findings, finding -> !follows(finding));
    }

    /** What the stages after reading have found in the catalogue that was read, without what only follows. */
    Findings ofStages(Findings findings) {
        return files.isEmpty() ? findings : kept(findings, finding -> !files.contains(finding.place().file()) && !follows(finding));
    }

    private static Findings kept(Findings findings, Predicate<Finding> which) {
        return Findings.of(findings.all().stream().filter(which).toList(), findings.excused());
    }

    private boolean follows(Finding finding) {
        String code = finding.code().id();
        return FOR_WANT_OF_OTHERS.contains(code) || MAY_STAND_IN.getOrDefault(code, List.of()).stream().anyMatch(files::contains)
                || CONVENTIONS.stream().anyMatch(files::contains) && READINGS.stream().anyMatch(finding.path()::startsWith);
    }
}
