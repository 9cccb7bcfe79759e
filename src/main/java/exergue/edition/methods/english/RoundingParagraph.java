package exergue.edition.methods.english;

import exergue.edition.methods.MethodsParagraph;
import exergue.edition.methods.Passage;
import exergue.edition.methods.Tally;
import exergue.measure.Kind;
import exergue.measure.PrintForm;
import exergue.measure.Units;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** To how many decimals figures are printed, what was rounded and how, and that nothing is padded. */
final class RoundingParagraph implements MethodsParagraph {

    @Override
    public List<Passage> passages(Tally tally) {
        PrintForm form = tally.style().form();
        List<String> kinds = new ArrayList<>();
        List<String> rounded = new ArrayList<>();
        for (Kind kind : tally.style().printed()) {
            if (kind != Kind.AXIS && tally.figures(kind) > 0) {
                kinds.add(Grammar.plural(Grammar.noun(kind)) + " to "
                        + fineness(form.decimals(kind), Units.normal(kind.dimension()).name()));
                if (tally.rounded().containsKey(kind)) {
                    rounded.add(Grammar.count(tally.rounded().get(kind), Grammar.noun(kind)));
                }
            }
        }
        if (kinds.isEmpty()) {
            return List.of();
        }
        String printed = Passage.capital(Grammar.list(kinds)).replaceFirst(" to ", " are printed to ");
        if (rounded.isEmpty()) {
            return Passage.of(List.of(printed + "; no " + (tally.conversions().isEmpty() ? "" : "unconverted ") + "figure had to be rounded,"
                    + " and none is padded with noughts."));
        }
        String halves = form.rounding() == RoundingMode.HALF_UP ? "halves upwards" : "halves to the even digit";
        return Passage.of(List.of(printed + ".", "Finer records (" + Grammar.list(rounded) + ") are rounded, " + halves
                + "; coarser ones stand as recorded and are never padded with noughts."));
    }

    private static String fineness(int decimals, String unit) {
        return decimals == 0 ? "whole " + unit + "s"
                : "at most " + Grammar.count(decimals, "decimal") + " of a " + unit;
    }
}
