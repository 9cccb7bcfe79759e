package exergue.edition.methods.italian;

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
        how.clause(Kind.WEIGHT, "rilevat", "", balance).ifPresent(clauses::add);
        how.clause(Kind.DIAMETER, "misurat", along(how.convention.sizing().direction()),
                how.convention.sizing().instrument()).ifPresent(clauses::add);
        how.clause(Kind.AXIS, "annotat", in(how.convention.turning().notation()), Optional.empty())
                .ifPresent(clauses::add);
        how.clause(Kind.DENSITY, "determinat", "", balance).ifPresent(clauses::add);
        List<String> sentences = new ArrayList<>();
        if (!clauses.isEmpty()) {
            sentences.add(Passage.capital(String.join("; ", clauses)) + ".");
        }
        int diameters = hand.printed(Kind.DIAMETER);
        if (diameters > 0 && how.convention.sizing().direction() == Direction.NOT_SAID) {
            sentences.add("La fonte non dice lungo quale linea " + (diameters == 1 ? "sia stato misurato " : "siano stati misurati ")
                    + Noun.DIAMETER.the(diameters) + ".");
        }
        if (hand.printed(Kind.AXIS) > 0 && how.convention.turning().anticlockwise()) {
            sentences.add("Questa fonte conta in senso antiorario; i suoi assi sono qui riportati in senso orario.");
        }
        if (hand.figuresPrinted() > 0) {
            how.convention.cleaning().ifPresent(state -> sentences.add(cleaning(state, hand)));
        }
        return sentences;
    }

    private static String cleaning(String state, Hand hand) {
        return switch (state) {
            case "cleaned" -> "Le monete erano state pulite"
                    + (hand.uncleaned() > 0 ? ", salvo diversa indicazione nella loro scheda." : ".");
            case "uncleaned" -> "Le monete non erano state pulite.";
            default -> "Stato delle monete al momento della misurazione: " + state + ".";
        };
    }

    /** "i pesi sono stati rilevati con un’approssimazione di 0,01 g (strumento: bilancia)"; nothing where nothing is known. */
    private Optional<String> clause(Kind kind, String stem, String how, Optional<String> instrument) {
        int figures = hand.printed(kind);
        Optional<String> step = ReadTo.of(convention, kind == Kind.DENSITY ? Kind.WEIGHT : kind).map(this::step);
        if (figures == 0 || how.isEmpty() && step.isEmpty() && instrument.isEmpty()) {
            return Optional.empty();
        }
        Noun noun = Noun.of(kind);
        String weighed = kind == Kind.DENSITY ? " mediante pesate" : "";
        String to = step.map(size -> (how.isEmpty() ? weighed : ",") + size).orElse("");
        return Optional.of(noun.the(figures) + " " + Grammar.is(figures) + " " + noun.with("stat", figures) + " "
                + noun.with(stem, figures) + how + to
                + instrument.map(name -> " (strumento: " + name + ")").orElse(""));
    }

    private String step(ReadTo step) {
        return " con un’approssimazione di " + step.figure(form) + Grammar.NO_BREAK
                + (step.unit().isNormal() ? step.unit().symbol() : ItalianUnits.of(step.unit()).singular());
    }

    private static String in(AxisNotation notation) {
        return switch (notation) {
            case NOT_SAID -> "";
            case HOURS -> " in ore";
            case DEGREES -> " in gradi";
            case ARROWS -> " con frecce";
        };
    }

    static String along(Direction direction) {
        return switch (direction) {
            case NOT_SAID -> "";
            case GREATEST -> " sulla larghezza massima";
            case LEAST_AND_GREATEST -> " sulla larghezza minima e su quella massima";
            case TOP_TO_BOTTOM -> " dall’alto in basso sul dritto";
            case SIDE_TO_SIDE -> " da un lato all’altro del dritto";
            case MEAN -> " come media di più misure";
            case FROM_PHOTOGRAPH -> " su una fotografia in scala";
        };
    }
}
