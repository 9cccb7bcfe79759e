package exergue.edition.methods;

import exergue.measure.Reading;
import exergue.model.HouseStyle;
import exergue.model.ReadingChoice.Status;
import java.util.ArrayList;
import java.util.List;

/**
 * A sign that occurs in the measurement lines.
 *
 * @param mark    as printed; blank where the house leaves a gap
 * @param figures that bear it; nought where the statement counts them elsewhere
 */
public record SignInUse(Meaning meaning, String mark, int figures) {

    /** What a sign says of a figure, or of its want. */
    public enum Meaning { OTHER_HAND, LEFT_OUT, MISSING, ILLEGIBLE, NOT_APPLICABLE, ABOUT, LESS_THAN, MORE_THAN, UNCERTAIN }

    /** So many signs fit a sentence; more are a list. */
    private static final int FEW = 2;

    /** In the order of the statement. */
    public static List<SignInUse> of(Tally tally) {
        HouseStyle style = tally.style();
        List<SignInUse> signs = new ArrayList<>();
        if (tally.otherHand() > 0 && !style.signs().otherHand().isBlank()) {
            signs.add(new SignInUse(Meaning.OTHER_HAND, style.signs().otherHand(), tally.otherHand()));
        }
        if (tally.damage().signUsed() && !style.signs().damaged().isBlank()) {
            signs.add(new SignInUse(Meaning.LEFT_OUT, style.signs().damaged(), 0));
        }
        absence(tally, Status.MISSING, new SignInUse(Meaning.MISSING, style.missing(), 0), signs);
        absence(tally, Status.ILLEGIBLE, new SignInUse(Meaning.ILLEGIBLE, style.illegible(), 0), signs);
        absence(tally, Status.NOT_APPLICABLE, new SignInUse(Meaning.NOT_APPLICABLE, style.notApplicable(), 0), signs);
        tally.qualified().forEach(count -> signs.add(qualifier(count.thing(), count.times(), style)));
        return signs;
    }

    private static void absence(Tally tally, Status status, SignInUse sign, List<SignInUse> signs) {
        if (tally.anyAbsent(status)) {
            signs.add(sign);
        }
    }

    private static SignInUse qualifier(Reading.Qualifier qualifier, int figures, HouseStyle style) {
        return switch (qualifier) {
            case ABOUT -> new SignInUse(Meaning.ABOUT, style.form().circa(), figures);
            case LESS_THAN -> new SignInUse(Meaning.LESS_THAN, "<", figures);
            case MORE_THAN -> new SignInUse(Meaning.MORE_THAN, ">", figures);
            case UNCERTAIN -> new SignInUse(Meaning.UNCERTAIN, "?", figures);
            case NONE -> throw new IllegalArgumentException("a figure without a qualifier has no sign");
        };
    }

    /**
     * Clauses as one sentence, or as a list where there are many.
     *
     * @param lead      words before the first clause, without a space after them
     * @param semicolon between clauses, with the spaces of the language before it
     */
    public static List<Passage> passages(String lead, List<String> clauses, String semicolon) {
        if (clauses.size() <= FEW) {
            return Passage.of(clauses.isEmpty() ? List.of()
                    : List.of(lead + " " + String.join(semicolon + " ", clauses) + "."));
        }
        List<String> items = new ArrayList<>();
        clauses.forEach(clause -> items.add(clause + (items.size() + 1 < clauses.size() ? semicolon : ".")));
        return List.of(new Passage.Listing(lead, items));
    }
}
