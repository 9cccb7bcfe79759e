package exergue.edition.methods.italian;

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
            int n = densities.weighed();
            sentences.add(of(n) + (n == 1 ? " è stata determinata" : " sono state determinate")
                    + " mediante pesata in aria e in acqua, tenendo conto della densità dell’acqua alla sua temperatura ("
                    + Density.WATER_SOURCE.replace(" and others", " e altri") + ") e della spinta dell’aria.");
        }
        if (densities.given() > 0) {
            int n = densities.given();
            sentences.add(of(n) + " " + Grammar.is(n) + (n == 1 ? " data come nella fonte." : " date come nella fonte."));
        }
        if (!densities.alloys().isEmpty()) {
            sentences.add("Dalla densità è ricavato un titolo: " + String.join("; ",
                    densities.alloys().stream().map(count -> fineness(count, tally.style().form())).toList())
                    + (densities.spread() == 0 ? "." : ". Tra parentesi stanno, dove differiscono in percentuali intere, il minimo e il massimo che la precisione della "
                    + "densità consente."));
            sentences.add("Un titolo ricavato dalla densità vale solo per una lega sana dei due metalli nominati: un terzo "
                    + "metallo, pori, corrosione, un’anima di altro metallo o aria aderente alla moneta lo falsano, senza che nulla "
                    + "nella cifra lo mostri.");
        }
        return Passage.of(sentences);
    }

    private static String of(int n) {
        return Passage.capital(Noun.DENSITY.the(n)) + " di " + Noun.COIN.count(n);
    }

    private static String fineness(Tally.Count<Alloy> count, PrintForm form) {
        Alloy alloy = count.thing();
        String heavier = metal(alloy.heavier());
        String lighter = metal(alloy.lighter());
        return "per " + Noun.COIN.count(count.times()) + " la parte " + Grammar.of(heavier) + ", come se "
                + (count.times() == 1 ? "fosse legata" : "fossero legate") + " con il solo " + lighter + " (" + heavier + " "
                + form.decimal(alloy.heavierDensity()) + ", " + lighter + " " + form.decimal(alloy.lighterDensity())
                + Grammar.NO_BREAK + "g/cm³)";
    }

    private static String metal(String metal) {
        return BookWord.metal(metal).in(Language.ITALIAN);
    }
}
