package exergue;

import exergue.check.Checker;
import exergue.cite.CiteCodes;
import exergue.edition.EditionCodes;
import exergue.finding.Code;
import exergue.finding.Excused;
import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.finding.NearMiss;
import exergue.finding.Place;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.HouseRules.Treated;
import exergue.model.Treatment;
import exergue.model.Written;
import exergue.source.SourceCodes;
import exergue.study.StudyCodes;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Looks at what the house style and the entries say of findings, once these have been judged. */
final class HouseCheck {

    private final Map<String, Severity> codes = Judgement.codes();
    private final List<Finding> found = new ArrayList<>();

    private HouseCheck() { }

    /** @param judged all that reading, checking and arranging have found, as judged */
    static Findings of(Catalogue catalogue, Findings judged) {
        HouseCheck check = new HouseCheck();
        catalogue.style().rules().treatments().forEach(check::look);
        check.look(Waiver.all(catalogue), judged);
        return Findings.of(check.found);
    }

    private void look(Treated treated) {
        String path = "findings." + treated.finding();
        if (isKnown(treated.finding(), path) && codes.get(treated.finding().value()) == Severity.ERROR
                && treated.treatment() != Treatment.ERROR) {
            found.add(Finding.of(ExcuseCodes.ERROR_STAYS, treated.finding().place(), path,
                    "“" + treated.finding() + "” is an error by itself, and stays one.",
                    "Leave it out of “findings”, and mend such errors where they are found."));
        }
    }

    private void look(List<Waiver> waivers, Findings judged) {
        Set<Place> used = judged.excused().stream().map(Excused::where).collect(Collectors.toSet());
        Set<String> withErrors = judged.all().stream().filter(finding -> codes.get(finding.code().id()) == Severity.ERROR)
                .map(finding -> finding.place().file()).collect(Collectors.toSet());
        for (Waiver waiver : waivers) {
            String code = waiver.code();
            if (!isKnown(waiver.excuse().finding(), "excused")) {
                continue;
            }
            if (codes.get(code) == Severity.ERROR) {
                found.add(Finding.of(ExcuseCodes.ERROR_STAYS, waiver.where(), "excused",
                        "“" + code + "” is an error by itself, and nothing can excuse it.", "Mend the error, and take the excuse out."));
            } else if (!used.contains(waiver.where()) && isLookedFor(code)
                    && !withErrors.contains(waiver.file()) && !withErrors.contains(waiver.where().file())) {
                found.add(Finding.of(ExcuseCodes.EXCUSE_WITHOUT_CAUSE, waiver.where(), "excused",
                        waiver.whose() + " excuses “" + code + "”, and nothing of the kind is found " + waiver.inWhat() + ".",
                        "Take the excuse out, or name the code that is meant: it stands in square brackets after the finding."));
            }
        }
    }

    private boolean isKnown(Written<String> code, String path) {
        if (codes.containsKey(code.value())) {
            return true;
        }
        found.add(Finding.of(ExcuseCodes.UNKNOWN_FINDING, code.place(), path, "There is no finding with the code “" + code + "”.",
                NearMiss.of(code.value(), codes.keySet()).map(near -> "Did you mean “" + near + "”?")
                        .orElse("The command explain lists all codes.")));
        return false;
    }

    /** Whether the stages that have run could have raised it; what only pages or pictures show cannot be missed yet. */
    private static boolean isLookedFor(String code) {
        return Stream.of(SourceCodes.all(), Checker.codes(), StudyCodes.all(), CiteCodes.all(), EditionCodes.all())
                .flatMap(List::stream).map(Code::id).anyMatch(code::equals);
    }
}
