package exergue.edition.methods.french;

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
                kinds.add("les " + noun.plural() + (kinds.isEmpty() ? " sont " + noun.with("imprimé", 2) : "") + " "
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
            return Passage.of(List.of(printed + Grammar.SEMICOLON + "aucune valeur "
                    + (tally.conversions().isEmpty() ? "" : "non convertie ")
                    + "n’a dû être arrondie, et aucune n’est complétée par des zéros."));
        }
        String halves = form.rounding() == RoundingMode.HALF_UP ? "les moitiés vers le haut" : "les moitiés au chiffre pair";
        return Passage.of(List.of(printed + ".", "Les mesures plus fines (" + Grammar.list(rounded) + ") sont arrondies, "
                + halves + Grammar.SEMICOLON + "les moins fines restent telles que notées, sans jamais être complétées par "
                + "des zéros."));
    }

    private static String fineness(int decimals, Kind kind) {
        String plural = FrenchUnits.of(Units.normal(kind.dimension())).plural();
        if (decimals == 0) {
            return "en " + plural + " entiers";
        }
        return "en " + plural + " avec " + (decimals == 1 ? "une décimale" : Grammar.NUMBERS.of(decimals) + " décimales")
                + " au plus";
    }
}
