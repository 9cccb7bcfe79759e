package exergue.edition.methods.english;

import static exergue.edition.methods.english.Grammar.agree;
import static exergue.edition.methods.english.Grammar.noun;
import static exergue.edition.methods.english.Grammar.was;

import exergue.edition.methods.Hand;
import exergue.edition.methods.Passage;
import exergue.edition.methods.ReadTo;
import exergue.measure.Convention.AxisNotation;
import exergue.measure.Convention.Direction;
import exergue.measure.Convention;
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
        this.form = form;
        this.convention = hand.convention();
    }

    static List<String> sentences(Hand hand, PrintForm form) {
        HowMeasured how = new HowMeasured(hand, form);
        List<String> clauses = new ArrayList<>();
        how.weights().ifPresent(clauses::add);
        how.diameters().ifPresent(clauses::add);
        how.axes().ifPresent(clauses::add);
        how.densities().ifPresent(clauses::add);
        List<String> sentences = new ArrayList<>();
        if (!clauses.isEmpty()) {
            sentences.add(Passage.capital(String.join("; ", clauses)) + ".");
        }
        int diameters = hand.printed(Kind.DIAMETER);
        if (diameters > 0 && how.convention.sizing().direction() == Direction.NOT_SAID) {
            sentences.add("It is not recorded along which line the " + agree(diameters, "diameter") + " "
                    + was(diameters) + " taken.");
        }
        if (hand.printed(Kind.AXIS) > 0 && how.convention.turning().anticlockwise()) {
            sentences.add("This source counts anticlockwise; its die-axes are turned to clockwise here.");
        }
        if (hand.figuresPrinted() > 0) {
            how.convention.cleaning().ifPresent(state -> sentences.add(cleaning(state, hand)));
        }
        return sentences;
    }

    /** The state of the coins is the author's words: "cleaned", "uncleaned", "as found", "some cleaned, some not". */
    private static String cleaning(String state, Hand hand) {
        if (state.matches("(?:un)?cleaned")) {
            boolean cleaned = state.equals("cleaned");
            return "The coins had " + (cleaned ? "" : "not ") + "been cleaned"
                    + (cleaned && hand.uncleaned() > 0 ? ", unless their entries say otherwise." : ".");
        }
        return state.matches("(?:as|after|before|in|with|without) .*") ? "The coins were measured " + state + "."
                : "State of the coins when they were measured: " + state + ".";
    }

    private Optional<String> weights() {
        Convention.Weighing weighing = convention.weighing();
        return clause(Kind.WEIGHT, "taken", weighing.instrument().map(HowMeasured::with).orElse(""),
                step(Kind.WEIGHT));
    }

    private Optional<String> densities() {
        Convention.Weighing weighing = convention.weighing();
        return clause(Kind.DENSITY, "found", weighing.instrument().map(HowMeasured::with).orElse(""),
                step(Kind.WEIGHT));
    }

    private Optional<String> diameters() {
        Convention.Sizing sizing = convention.sizing();
        String how = along(sizing.direction()) + sizing.instrument().map(HowMeasured::with).orElse("");
        return clause(Kind.DIAMETER, "taken", how, step(Kind.DIAMETER));
    }

    private Optional<String> axes() {
        Convention.Turning turning = convention.turning();
        String notation = turning.notation() == AxisNotation.NOT_SAID ? ""
                : (turning.notation() == AxisNotation.ARROWS ? " as " : " in ") + turning.notation().word();
        return clause(Kind.AXIS, "recorded", notation, step(Kind.AXIS));
    }

    /** "the weights were taken with an electronic balance (read to 0.01 g)"; nothing where nothing is known. */
    private Optional<String> clause(Kind kind, String verb, String how, Optional<String> step) {
        int figures = hand.printed(kind);
        if (figures == 0 || how.isEmpty() && step.isEmpty()) {
            return Optional.empty();
        }
        String subject = "the " + agree(figures, noun(kind)) + " " + was(figures) + " ";
        return Optional.of(how.isEmpty() ? subject + "read to " + step.orElseThrow()
                : subject + verb + how + step.map(size -> " (read to " + size + ")").orElse(""));
    }

    private static String with(String instrument) {
        return " with " + Grammar.withArticle(instrument);
    }

    private static String along(Direction direction) {
        return switch (direction) {
            case NOT_SAID -> "";
            case GREATEST -> " across the greatest width";
            case LEAST_AND_GREATEST -> " across the least and the greatest width";
            case TOP_TO_BOTTOM -> " from top to bottom of the obverse";
            case SIDE_TO_SIDE -> " from side to side of the obverse";
            case MEAN -> " as the mean of several";
            case FROM_PHOTOGRAPH -> " from a scaled photograph";
        };
    }

    /** "0.1 grain", "1/16 inch" */
    private Optional<String> step(Kind kind) {
        return ReadTo.of(convention, kind).map(step -> step.figure(form) + Grammar.NO_BREAK
                + (step.unit().isNormal() ? step.unit().symbol() : step.unit().name()));
    }
}
