package exergue.edition.methods.german;

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
                Noun noun = Noun.of(kind);
                kinds.add(noun.plural() + (kinds.isEmpty() ? " sind " : " ") + fineness(form.decimals(kind), kind)
                        + (kinds.isEmpty() ? " gedruckt" : ""));
                if (tally.rounded().containsKey(kind)) {
                    rounded.add(noun.count(tally.rounded().get(kind)));
                }
            }
        }
        if (kinds.isEmpty()) {
            return List.of();
        }
        String printed = Grammar.list(kinds);
        if (rounded.isEmpty()) {
            return Passage.of(List.of(printed + "; " + (tally.conversions().isEmpty() ? "kein Wert musste"
                    : "von den nicht umgerechneten Werten musste keiner") + " gerundet werden, und keiner ist mit Nullen "
                    + "aufgefüllt."));
        }
        String halves = form.rounding() == RoundingMode.HALF_UP ? "Hälften nach oben" : "Hälften zur geraden Ziffer";
        return Passage.of(List.of(printed + ".", "Feinere Angaben (" + Grammar.list(rounded) + ") sind gerundet, "
                + halves + "; gröbere stehen wie überliefert und sind nie mit Nullen aufgefüllt."));
    }

    private static String fineness(int decimals, Kind kind) {
        String plural = GermanUnits.of(Units.normal(kind.dimension())).plural();
        if (decimals == 0) {
            return "in ganzen " + plural;
        }
        return "in " + plural + " mit höchstens "
                + (decimals == 1 ? "einer Dezimalstelle" : Grammar.NUMBERS.of(decimals) + " Dezimalstellen");
    }
}
