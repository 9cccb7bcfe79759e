package exergue.edition.methods.english;

import exergue.edition.methods.Absence;
import exergue.edition.methods.Absence.Reason;
import exergue.edition.methods.MethodsParagraph;
import exergue.edition.methods.Tally;
import java.util.ArrayList;
import java.util.List;

/** What is missing, what cannot be, what cannot be read, and why. */
final class AbsenceParagraph implements MethodsParagraph {

    @Override
    public List<String> sentences(Tally tally) {
        List<String> sentences = new ArrayList<>();
        for (Absence absence : tally.absences()) {
            sentences.add(sentence(absence) + " (" + reasons(absence) + ").");
        }
        return sentences;
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

    /** "not recorded", or, where there are several, "not recorded: three; coin lost: two". */
    private static String reasons(Absence absence) {
        if (absence.reasons().size() == 1) {
            return words(absence.reasons().get(0).thing());
        }
        return String.join("; ", absence.reasons().stream()
                .map(reason -> words(reason.thing()) + ": " + Grammar.number(reason.times())).toList());
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
