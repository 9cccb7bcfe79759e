package exergue.edition.methods.german;

import exergue.edition.methods.Hand;
import exergue.edition.methods.Passage;
import exergue.edition.methods.ReadTo;
import exergue.measure.Convention;
import exergue.measure.Convention.AxisNotation;
import exergue.measure.Convention.Direction;
import exergue.measure.Kind;
import exergue.measure.PrintForm;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** With what and how one hand measured, as far as its convention says. */
final class HowMeasured {

    private final Hand hand;
    private final Convention convention;
    private final PrintForm form;

    private HowMeasured(Hand hand, PrintForm form) {
        this.hand = hand;
        this.convention = hand.convention();
        this.form = form;
    }

    static List<String> sentences(Hand hand, PrintForm form) {
        HowMeasured how = new HowMeasured(hand, form);
        Optional<String> balance = how.convention.weighing().instrument();
        List<String> clauses = new ArrayList<>();
        how.clause(Kind.WEIGHT, "", balance).ifPresent(clauses::add);
        how.clause(Kind.DIAMETER, along(how.convention.sizing().direction()), how.convention.sizing().instrument())
                .ifPresent(clauses::add);
        how.clause(Kind.AXIS, in(how.convention.turning().notation()), Optional.empty()).ifPresent(clauses::add);
        how.clause(Kind.DENSITY, " durch Wägung bestimmt", balance).ifPresent(clauses::add);
        List<String> sentences = new ArrayList<>();
        if (!clauses.isEmpty()) {
            sentences.add(Passage.capital(String.join("; ", clauses)) + ".");
        }
        int diameters = hand.printed(Kind.DIAMETER);
        if (diameters > 0 && how.convention.sizing().direction() == Direction.NOT_SAID) {
            sentences.add("Entlang welcher Linie " + Noun.DIAMETER.the(diameters) + " gemessen "
                    + Grammar.was(diameters) + ", ist nicht überliefert.");
        }
        if (hand.printed(Kind.AXIS) > 0 && how.convention.turning().anticlockwise()) {
            sentences.add("Diese Quelle zählt gegen den Uhrzeigersinn; ihre Stempelstellungen sind hier in den "
                    + "Uhrzeigersinn übertragen.");
        }
        if (hand.figuresPrinted() > 0) {
            how.convention.cleaning().ifPresent(state -> sentences.add(cleaning(state, hand)));
        }
        return sentences;
    }

    private static String cleaning(String state, Hand hand) {
        return switch (state) {
            case "cleaned" -> "Die Münzen waren gereinigt"
                    + (hand.uncleaned() > 0 ? ", soweit der einzelne Eintrag nichts anderes vermerkt." : ".");
            case "uncleaned" -> "Die Münzen waren nicht gereinigt.";
            default -> "Zustand der Münzen bei der Messung: " + state + ".";
        };
    }

    /**
     * "die Durchmesser wurden von Rand zu Rand gemessen und auf 0,1 mm abgelesen (Gerät: Messschieber)"; nothing where
     * nothing is known.
     */
    private Optional<String> clause(Kind kind, String how, Optional<String> instrument) {
        int figures = hand.printed(kind);
        Optional<String> step = ReadTo.of(convention, kind == Kind.DENSITY ? Kind.WEIGHT : kind).map(this::step);
        if (figures == 0 || how.isEmpty() && step.isEmpty() && instrument.isEmpty()
                || kind == Kind.DENSITY && step.isEmpty() && instrument.isEmpty()) {
            return Optional.empty();
        }
        String read = how + step.map(size -> (how.isEmpty() ? " auf " : kind == Kind.DENSITY ? ", abgelesen auf " : " und auf ")
                + size + (kind == Kind.DENSITY ? "" : " abgelesen")).orElse("");
        return Optional.of(Noun.of(kind).the(figures) + " " + Grammar.was(figures) + (read.isEmpty() ? " gemessen" : read)
                + instrument.map(name -> " (Gerät: " + name + ")").orElse(""));
    }

    private String step(ReadTo step) {
        return step.figure(form) + Grammar.NO_BREAK
                + (step.unit().isNormal() ? step.unit().symbol() : GermanUnits.of(step.unit()).singular());
    }

    private static String in(AxisNotation notation) {
        return switch (notation) {
            case NOT_SAID -> "";
            case HOURS -> " in Stunden erfasst";
            case DEGREES -> " in Grad erfasst";
            case ARROWS -> " durch Pfeile erfasst";
        };
    }

    private static String along(Direction direction) {
        return direction == Direction.NOT_SAID ? "" : " " + line(direction)
                + (direction == Direction.MEAN ? " bestimmt" : " gemessen");
    }

    /** Where or how a diameter was measured: "von oben nach unten über die Vorderseite". */
    static String line(Direction direction) {
        return switch (direction) {
            case NOT_SAID -> "";
            case GREATEST -> "an der breitesten Stelle";
            case LEAST_AND_GREATEST -> "an der schmalsten und an der breitesten Stelle";
            case TOP_TO_BOTTOM -> "von oben nach unten über die Vorderseite";
            case SIDE_TO_SIDE -> "von Seite zu Seite über die Vorderseite";
            case MEAN -> "als Mittel mehrerer Messungen";
            case FROM_PHOTOGRAPH -> "an einer maßstäblichen Fotografie";
        };
    }
}
