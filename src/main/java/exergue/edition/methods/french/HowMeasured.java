package exergue.edition.methods.french;

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
        how.clause(Kind.WEIGHT, "relevé", "", balance).ifPresent(clauses::add);
        how.clause(Kind.DIAMETER, "pris", along(how.convention.sizing().direction()),
                how.convention.sizing().instrument()).ifPresent(clauses::add);
        how.clause(Kind.AXIS, "noté", in(how.convention.turning().notation()), Optional.empty()).ifPresent(clauses::add);
        how.clause(Kind.DENSITY, "déterminé", "", balance).ifPresent(clauses::add);
        List<String> sentences = new ArrayList<>();
        if (!clauses.isEmpty()) {
            sentences.add(Passage.capital(String.join(Grammar.SEMICOLON, clauses)) + ".");
        }
        int diameters = hand.printed(Kind.DIAMETER);
        if (diameters > 0 && how.convention.sizing().direction() == Direction.NOT_SAID) {
            sentences.add("La source ne dit pas selon quelle ligne " + Noun.DIAMETER.the(diameters)
                    + (diameters == 1 ? " a été pris." : " ont été pris."));
        }
        if (hand.printed(Kind.AXIS) > 0 && how.convention.turning().anticlockwise()) {
            sentences.add("Cette source compte dans le sens inverse des aiguilles d’une montre" + Grammar.SEMICOLON
                    + "ses axes sont ramenés ici au sens des aiguilles.");
        }
        if (hand.figuresPrinted() > 0) {
            how.convention.cleaning().ifPresent(state -> sentences.add(cleaning(state, hand)));
        }
        return sentences;
    }

    private static String cleaning(String state, Hand hand) {
        return switch (state) {
            case "cleaned" -> "Les monnaies avaient été nettoyées"
                    + (hand.uncleaned() > 0 ? ", sauf mention contraire dans leur notice." : ".");
            case "uncleaned" -> "Les monnaies n’avaient pas été nettoyées.";
            default -> "État des monnaies lors des mesures" + Grammar.COLON + state + ".";
        };
    }

    /** "les poids ont été relevés à 0,01 g près (instrument : balance)"; nothing where nothing is known. */
    private Optional<String> clause(Kind kind, String verb, String how, Optional<String> instrument) {
        int figures = hand.printed(kind);
        Optional<String> step = ReadTo.of(convention, kind == Kind.DENSITY ? Kind.WEIGHT : kind).map(this::step);
        if (figures == 0 || how.isEmpty() && step.isEmpty() && instrument.isEmpty()) {
            return Optional.empty();
        }
        Noun noun = Noun.of(kind);
        String taken = verb.equals("pris") ? verb : noun.with(verb, figures);
        String to = step.map(size -> (how.isEmpty() ? " " : ", ") + (kind == Kind.DENSITY ? "par pesée " : "") + size).orElse("");
        return Optional.of(noun.the(figures) + (figures == 1 ? " a été " : " ont été ") + taken + how + to
                + instrument.map(name -> " (instrument" + Grammar.COLON + name + ")").orElse(""));
    }

    private String step(ReadTo step) {
        return "à " + step.figure(form) + Grammar.NO_BREAK
                + (step.unit().isNormal() ? step.unit().symbol() : FrenchUnits.of(step.unit()).singular()) + " près";
    }

    private static String in(AxisNotation notation) {
        return switch (notation) {
            case NOT_SAID -> "";
            case HOURS -> " en heures";
            case DEGREES -> " en degrés";
            case ARROWS -> " par des flèches";
        };
    }

    static String along(Direction direction) {
        return switch (direction) {
            case NOT_SAID -> "";
            case GREATEST -> " selon la plus grande largeur";
            case LEAST_AND_GREATEST -> " selon la plus petite et la plus grande largeur";
            case TOP_TO_BOTTOM -> " de haut en bas du droit";
            case SIDE_TO_SIDE -> " d’un bord à l’autre du droit";
            case MEAN -> " comme moyenne de plusieurs mesures";
            case FROM_PHOTOGRAPH -> " sur une photographie à l’échelle";
        };
    }
}
