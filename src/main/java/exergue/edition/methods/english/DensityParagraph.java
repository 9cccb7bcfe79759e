package exergue.edition.methods.english;

import exergue.edition.methods.DensityTally;
import exergue.edition.methods.MethodsParagraph;
import exergue.edition.methods.Passage;
import exergue.edition.methods.Tally;
import exergue.measure.Alloy;
import exergue.measure.Density;
import exergue.measure.PrintForm;
import java.util.ArrayList;
import java.util.List;

/** How densities were found, what fineness follows from them, and how little that is worth without a sound alloy. */
final class DensityParagraph implements MethodsParagraph {

    @Override
    public List<Passage> passages(Tally tally) {
        DensityTally densities = tally.densities();
        List<String> sentences = new ArrayList<>();
        if (densities.weighed() > 0) {
            sentences.add("The " + Grammar.agree(densities.weighed(), "density") + " of "
                    + Grammar.count(densities.weighed(), "coin") + " " + Grammar.was(densities.weighed())
                    + " found by weighing in air and in water, with the density of water at its temperature ("
                    + Density.WATER_SOURCE + ") and the buoyancy of air taken into account.");
        }
        if (densities.given() > 0) {
            sentences.add("The " + Grammar.agree(densities.given(), "density") + " of "
                    + Grammar.count(densities.given(), "coin") + " " + Grammar.is(densities.given())
                    + " given as in the source.");
        }
        if (!densities.alloys().isEmpty()) {
            sentences.add("From the density a fineness is worked out: " + String.join("; ",
                    densities.alloys().stream().map(count -> fineness(count, tally.style().form())).toList())
                    + (densities.spread() == 0 ? "." : ". In brackets stand, where they differ in whole per cents, the least and the most that the precision of the density "
                    + "allows."));
            sentences.add(Density.CAUTION);
        }
        return Passage.of(sentences);
    }

    private static String fineness(Tally.Count<Alloy> count, PrintForm form) {
        Alloy alloy = count.thing();
        return "for " + Grammar.count(count.times(), "coin") + " the share of " + alloy.heavier() + ", as if alloyed with "
                + alloy.lighter() + " alone (" + alloy.heavier() + " " + form.decimal(alloy.heavierDensity()) + ", "
                + alloy.lighter() + " " + form.decimal(alloy.lighterDensity()) + Grammar.NO_BREAK + "g/cm³)";
    }
}
