package exergue.edition.methods.french;

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
            sentences.add(of(n) + (n == 1 ? " a été déterminée" : " ont été déterminées")
                    + " par pesée dans l’air et dans l’eau, compte tenu de la densité de l’eau à sa température ("
                    + Density.WATER_SOURCE.replace(" and others", " et al.") + ") et de la poussée de l’air.");
        }
        if (densities.given() > 0) {
            int n = densities.given();
            sentences.add(of(n) + (n == 1 ? " est donnée telle qu’elle figure" : " sont données telles qu’elles figurent")
                    + " dans la source.");
        }
        if (!densities.alloys().isEmpty()) {
            sentences.add("Un titre est tiré de la densité" + Grammar.COLON + String.join(Grammar.SEMICOLON,
                    densities.alloys().stream().map(count -> fineness(count, tally.style().form())).toList())
                    + (densities.spread() == 0 ? "." : ". Entre parenthèses figurent, là où ils diffèrent au pour cent près, le minimum et le maximum que permet la "
                    + "précision de la densité."));
            sentences.add("Un titre tiré de la densité ne vaut que pour un alliage sain des deux métaux nommés"
                    + Grammar.COLON + "un troisième métal, des pores, la corrosion, une âme d’un autre métal ou de l’air adhérant à "
                    + "la monnaie le faussent, sans que rien dans le chiffre ne le montre.");
        }
        return Passage.of(sentences);
    }

    private static String of(int n) {
        return Passage.capital(Noun.DENSITY.the(n)) + " " + Grammar.of(Noun.COIN.count(n));
    }

    private static String fineness(Tally.Count<Alloy> count, PrintForm form) {
        Alloy alloy = count.thing();
        String heavier = metal(alloy.heavier());
        String lighter = metal(alloy.lighter());
        return "pour " + Noun.COIN.count(count.times()) + " la part " + Grammar.of(heavier) + ", comme si "
                + (count.times() == 1 ? "elle n’était alliée" : "elles n’étaient alliées") + " qu’"
                + (Grammar.isElided(lighter) ? "à l’" : "au ") + lighter + " (" + heavier + " "
                + form.decimal(alloy.heavierDensity()) + ", " + lighter + " " + form.decimal(alloy.lighterDensity())
                + Grammar.NO_BREAK + "g/cm³)";
    }

    private static String metal(String metal) {
        return BookWord.metal(metal).in(Language.FRENCH);
    }
}
