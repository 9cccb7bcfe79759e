package exergue.edition.methods.italian;

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
                kinds.add(noun.the(2) + (kinds.isEmpty() ? " sono " + noun.with("stampat", 2) : "") + " "
                        + fineness(form.decimals(kind), kind));
                if (tally.rounded().containsKey(kind)) {
                    rounded.add(noun.count(tally.rounded().get(kind)));
                }
            }
        }
        if (kinds.isEmpty()) {
            return List.of();
        }
        String printed = Passage.capital(Grammar.list(kinds));
        if (rounded.isEmpty()) {
            return Passage.of(List.of(printed + "; nessun valore " + (tally.conversions().isEmpty() ? "" : "non convertito ")
                    + "ha richiesto un arrotondamento, e nessuno è completato con zeri."));
        }
        String halves = form.rounding() == RoundingMode.HALF_UP ? "le metà per eccesso" : "le metà alla cifra pari";
        return Passage.of(List.of(printed + ".", "Le misure più fini (" + Grammar.list(rounded) + ") sono arrotondate, "
                + halves + "; quelle meno fini restano come registrate e non sono mai completate con zeri."));
    }

    private static String fineness(int decimals, Kind kind) {
        String plural = ItalianUnits.of(Units.normal(kind.dimension())).plural();
        if (decimals == 0) {
            return "in " + plural + " interi";
        }
        return "in " + plural + " con non più di "
                + (decimals == 1 ? "un decimale" : Grammar.NUMBERS.of(decimals) + " decimali");
    }
}
