package exergue;

import exergue.check.Checker;
import exergue.edition.PrintedTexts;
import exergue.finding.Excused;
import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.model.Catalogue;
import exergue.study.Plausibility;
import exergue.study.die.DieChecks;
import exergue.typeset.Coverage;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;

/** The checks of a catalogue, each for itself, so that they share the processors with whatever runs beside them. */
final class ChecksBeside {

    private final List<ForkJoinTask<Findings>> begun;

    private ChecksBeside(List<ForkJoinTask<Findings>> begun) {
        this.begun = begun;
    }

    /** Begins them, those that take longest first, and returns at once. */
    static ChecksBeside begin(Catalogue catalogue) {
        List<Callable<Findings>> checks = new ArrayList<>();
        checks.add(() -> Plausibility.check(catalogue));
        checks.add(() -> Coverage.missing(PrintedTexts.of(catalogue)));
        checks.add(() -> DieChecks.check(catalogue));
        Checker.rules().forEach(rule -> checks.add(() -> Findings.of(rule.faults(catalogue))));
        return new ChecksBeside(checks.stream().map(ForkJoinPool.commonPool()::submit).toList());
    }

    /** Asked for from the last to the first: a check that nobody has begun is done by who asks for it. */
    Findings all() {
        List<Finding> all = new ArrayList<>();
        List<Excused> excused = new ArrayList<>();
        for (int i = begun.size() - 1; i >= 0; i--) {
            Findings found = begun.get(i).join();
            all.addAll(found.all());
            excused.addAll(found.excused());
        }
        return Findings.of(all, excused);
    }
}
