package exergue.edition.methods.italian;

import exergue.edition.methods.Absence;
import exergue.edition.methods.Absence.Reason;
import exergue.edition.methods.MethodsParagraph;
import exergue.edition.methods.Passage;
import exergue.edition.methods.Tally;
import java.util.List;

/** What is missing, what cannot be, what cannot be read, and why. */
final class AbsenceParagraph implements MethodsParagraph {

    @Override
    public List<Passage> passages(Tally tally) {
        return Passage.of(tally.absences().stream()
                .map(absence -> sentence(absence) + " (" + reasons(absence) + ").").toList());
    }

    private static String sentence(Absence absence) {
        Noun noun = Noun.of(absence.kind());
        String coins = Noun.COIN.count(absence.coins());
        return switch (absence.status()) {
            case NOT_APPLICABLE -> "Per " + coins + " non può esservi " + noun.singular();
            case ILLEGIBLE -> Passage.capital(noun.the(1)) + " di " + coins + " è " + noun.with("registrat", 1)
                    + " ma illeggibile";
            default -> Passage.capital(noun.none()) + " è " + noun.with("not", 1) + " per " + coins;
        };
    }

    /** "moneta perduta: due; non disponibile: una"; without counts where each reason is one coin's. */
    private static String reasons(Absence absence) {
        List<Tally.Count<Reason>> reasons = absence.reasons();
        boolean counted = reasons.size() > 1 && reasons.stream().anyMatch(reason -> reason.times() > 1);
        boolean among = reasons.size() > 1;
        return String.join("; ", counted ? Noun.COIN.tallied(reasons, reason -> words(reason, among))
                : reasons.stream().map(reason -> words(reason.thing(), among)).toList());
    }

    /** @param among true where others stand beside it, so that a semicolon in it would seem to begin another */
    private static String words(Reason reason, boolean among) {
        return among ? words(reason).replace(';', ',') : words(reason);
    }

    private static String words(Reason reason) {
        return switch (reason.cause()) {
            case SAID -> reason.words();
            case UNIFACE -> "un lato liscio";
            case PUNCHED -> "prodotta con più punzoni";
            case NOT_SAID -> "senza indicazione del motivo";
        };
    }
}
