package exergue;

import exergue.finding.Code;
import exergue.finding.Excused;
import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.HouseRules.Treated;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What the house and the entries make of the findings: kinds of findings that weigh more or less, or nothing, in this
 * catalogue, and findings that an entry or the house excuses with a reason, as far as a {@link Waiver} reaches. What is
 * an error by itself stays one. Judging what has been judged changes nothing.
 */
final class Judgement {

    private final Map<String, Severity> byThemselves;
    private final Map<String, Treated> treated = new HashMap<>();
    private final Map<String, List<Waiver>> byFile;

    private Judgement(Catalogue catalogue) {
        byThemselves = codes();
        catalogue.style().rules().treatments().forEach(one -> treated.put(one.finding().value(), one));
        byFile = Waiver.all(catalogue).stream().collect(Collectors.groupingBy(Waiver::file));
    }

    /** What each kind of finding weighs where the house says nothing. */
    static Map<String, Severity> codes() {
        return AllCodes.all().stream().collect(Collectors.toMap(Code::id, Code::severity));
    }

    static Findings of(Findings raised, Optional<Catalogue> catalogue) {
        boolean nothingSaid = catalogue.isEmpty() || catalogue.get().style().rules().treatments().isEmpty()
                && Waiver.all(catalogue.get()).isEmpty();
        return nothingSaid || raised.isEmpty() ? raised : new Judgement(catalogue.get()).of(raised);
    }

    private Findings of(Findings raised) {
        List<Finding> kept = new ArrayList<>();
        List<Excused> excused = new ArrayList<>(raised.excused());
        for (Finding finding : raised.all()) {
            Optional<Waiver> waiver = waiver(finding);
            if (byThemselves.get(finding.code().id()) == Severity.ERROR) {
                kept.add(finding);
            } else if (waiver.isPresent()) {
                excused.add(new Excused(finding, waiver.get().excuse().because().value(), waiver.get().where()));
            } else {
                weighed(finding).ifPresent(kept::add);
            }
        }
        return Findings.of(kept, excused);
    }

    /** The first that is meant for it. */
    private Optional<Waiver> waiver(Finding finding) {
        return byFile.getOrDefault(finding.place().file(), List.of()).stream().filter(one -> one.covers(finding)).findFirst();
    }

    private Optional<Finding> weighed(Finding finding) {
        Treated told = treated.get(finding.code().id());
        Function<Severity, Finding> as = finding::as;
        return told == null ? Optional.of(finding) : told.treatment().severity().map(as);
    }
}
