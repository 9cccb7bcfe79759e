package exergue.edition.methods.english;

import exergue.edition.methods.Absence.Reason;
import exergue.edition.methods.Absence;
import exergue.edition.methods.MethodsParagraph;
import exergue.edition.methods.Passage;
import exergue.edition.methods.Tally;
import java.util.ArrayList;
import java.util.List;

/** What is missing, what cannot be, what cannot be read, and why. */
final class AbsenceParagraph implements MethodsParagraph {

    @Override
    public List<Passage> passages(Tally tally) {
        List<String> sentences = new ArrayList<>();
        for (Absence absence : tally.absences()) {
            sentences.add(sentence(absence) + " (" + reasons(absence) + ").");
        }
        return Passage.of(sentences);
    }

    private static String sentence(Absence absence) {
        String noun = Grammar.noun(absence.kind());
        String coins = Grammar.count(absence.coins(), "coin");
        return switch (absence.status()) {
            case NOT_APPLICABLE -> "For " + coins + " there can be no " + noun;
            case ILLEGIBLE -> "The " + noun + " of " + coins + " is recorded but cannot be read";
            default -> "No " + noun + " is known for " + coins;
        };
    }

    /** "not recorded", "not recorded: three; coin lost: two"; without counts where each reason is one coin's. */
    private static String reasons(Absence absence) {
        List<Tally.Count<Reason>> reasons = absence.reasons();
        boolean counted = reasons.size() > 1 && reasons.stream().anyMatch(reason -> reason.times() > 1);
        boolean among = reasons.size() > 1;
        return String.join("; ", counted ? Grammar.tallied(reasons, reason -> words(reason, among))
                : reasons.stream().map(reason -> words(reason.thing(), among)).toList());
    }

    /** @param among true where others stand beside it, so that a semicolon in it would seem to begin another */
    private static String words(Reason reason, boolean among) {
        return among ? words(reason).replace(';', ',') : words(reason);
    }

    private static String words(Reason reason) {
        return switch (reason.cause()) {
            case SAID -> reason.words();
            case UNIFACE -> "one side blank";
            case PUNCHED -> "made with several punches";
            case NOT_SAID -> "no reason given";
        };
    }
}
