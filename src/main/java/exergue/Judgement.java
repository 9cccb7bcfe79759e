package exergue;

import exergue.finding.Code;
import exergue.finding.Excused;
import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Excuse;
import exergue.model.HouseRules.Treated;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the house and the entries make of the findings: kinds of findings that weigh more or less, or nothing, in this
 * catalogue, and findings that an entry excuses with a reason. An excuse holds for the file it stands in. What is an
 * error by itself stays one. Judging what has been judged changes nothing.
 */
final class Judgement {

    private record Where(String file, String code) { }

    private final Map<String, Severity> byThemselves;
    private final Map<String, Treated> treated = new HashMap<>();
    private final Map<Where, Excuse> excuses = new HashMap<>();

    private Judgement(Catalogue catalogue) {
        byThemselves = codes();
        catalogue.style().rules().treatments().forEach(one -> treated.put(one.finding().value(), one));
        excuses(catalogue).forEach(excuse ->
                excuses.putIfAbsent(new Where(excuse.finding().place().file(), excuse.finding().value()), excuse));
    }

    static Stream<Excuse> excuses(Catalogue catalogue) {
        return Stream.concat(catalogue.types().stream().flatMap(type -> type.excused().stream()),
                catalogue.coins().stream().flatMap(coin -> coin.excused().stream()));
    }

    /** What each kind of finding weighs where the house says nothing. */
    static Map<String, Severity> codes() {
        return AllCodes.all().stream().collect(Collectors.toMap(Code::id, Code::severity));
    }

    static Findings of(Findings raised, Optional<Catalogue> catalogue) {
        boolean nothingSaid = catalogue.isEmpty() || catalogue.get().style().rules().treatments().isEmpty()
                && excuses(catalogue.get()).findAny().isEmpty();
        return nothingSaid || raised.isEmpty() ? raised : new Judgement(catalogue.get()).of(raised);
    }

    private Findings of(Findings raised) {
        List<Finding> kept = new ArrayList<>();
        List<Excused> excused = new ArrayList<>(raised.excused());
        for (Finding finding : raised.all()) {
            Excuse excuse = excuses.get(new Where(finding.place().file(), finding.code().id()));
            if (byThemselves.get(finding.code().id()) == Severity.ERROR) {
                kept.add(finding);
            } else if (excuse != null) {
                excused.add(new Excused(finding, excuse.because().value(), excuse.finding().place()));
            } else {
                weighed(finding).ifPresent(kept::add);
            }
        }
        return Findings.of(kept, excused);
    }

    private Optional<Finding> weighed(Finding finding) {
        Treated told = treated.get(finding.code().id());
        Function<Severity, Finding> as = finding::as;
        return told == null ? Optional.of(finding) : told.treatment().severity().map(as);
    }
}
