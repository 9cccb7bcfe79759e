package exergue.edition.methods.german;

import exergue.edition.methods.DensityTally;
import exergue.edition.methods.MethodsParagraph;
import exergue.edition.methods.Passage;
import exergue.edition.methods.Tally;
import exergue.measure.Alloy;
import exergue.measure.Density;
import exergue.measure.PrintForm;
import exergue.model.BookWord;
import exergue.model.Language;
import java.util.ArrayList;
import java.util.List;

/** How densities were found, what fineness follows from them, and how little that is worth without a sound alloy. */
final class DensityParagraph implements MethodsParagraph {

    @Override
    public List<Passage> passages(Tally tally) {
        DensityTally densities = tally.densities();
        List<String> sentences = new ArrayList<>();
        if (densities.weighed() > 0) {
            sentences.add(of(densities.weighed()) + " " + Grammar.was(densities.weighed())
                    + " durch Wägung in Luft und in Wasser bestimmt; die Dichte des Wassers bei seiner Temperatur ("
                    + Density.WATER_SOURCE.replace(" and others", " u.\u00A0a.") + ") und der Auftrieb der Luft sind dabei "
                    + "berücksichtigt.");
        }
        if (densities.given() > 0) {
            sentences.add(of(densities.given()) + " " + Grammar.is(densities.given()) + " nach der Quelle angegeben.");
        }
        if (!densities.alloys().isEmpty()) {
            sentences.add("Aus der Dichte ist ein Feingehalt errechnet: " + String.join("; ",
                    densities.alloys().stream().map(count -> fineness(count, tally.style().form())).toList())
                    + (densities.spread() == 0 ? "." : ". In Klammern stehen, wo sie sich in ganzen Prozenten unterscheiden, der kleinste und der größte Wert, den die "
                    + "Genauigkeit der Dichte zulässt."));
            sentences.add("Ein Feingehalt aus der Dichte gilt nur für eine einwandfreie Legierung der beiden genannten Metalle: "
                    + "ein drittes Metall, Poren, Korrosion, ein unedler Kern oder Luft, die an der Münze haftet, verfälschen "
                    + "ihn, ohne dass die Zahl es erkennen ließe.");
        }
        return Passage.of(sentences);
    }

    private static String of(int n) {
        return Passage.capital(Noun.DENSITY.the(n)) + " " + Noun.COIN.whose(n);
    }

    private static String fineness(Tally.Count<Alloy> count, PrintForm form) {
        Alloy alloy = count.thing();
        String heavier = metal(alloy.heavier());
        String lighter = metal(alloy.lighter());
        return "für " + Noun.COIN.accusative(count.times()) + " der Anteil an " + heavier + ", als "
                + (count.times() == 1 ? "wäre sie" : "wären sie") + " allein mit " + lighter + " legiert (" + heavier + " "
                + form.decimal(alloy.heavierDensity()) + ", " + lighter + " " + form.decimal(alloy.lighterDensity())
                + Grammar.NO_BREAK + "g/cm³)";
    }

    private static String metal(String metal) {
        return BookWord.metal(metal).in(Language.GERMAN);
    }
}
