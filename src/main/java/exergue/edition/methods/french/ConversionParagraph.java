package exergue.edition.methods.french;

import exergue.edition.methods.Conversion;
import exergue.edition.methods.MethodsParagraph;
import exergue.edition.methods.Passage;
import exergue.edition.methods.Tally;
import exergue.measure.Kind;
import exergue.measure.PrintForm;
import exergue.measure.SizeScale;
import exergue.measure.Unit;
import exergue.measure.Units;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What was converted from what, with the factor, and its published source where that was looked up. */
final class ConversionParagraph implements MethodsParagraph {

    @Override
    public List<Passage> passages(Tally tally) {
        List<String> sentences = new ArrayList<>();
        Set<Unit> explained = new HashSet<>();
        boolean weightsOrSizes = false;
        for (Conversion conversion : tally.conversions()) {
            sentences.add(conversion.scale().isPresent() ? sizes(conversion)
                    : sentence(conversion, explained, tally.style().form()));
            weightsOrSizes |= conversion.kind() != Kind.AXIS;
        }
        if (weightsOrSizes) {
            sentences.add("Les valeurs converties ne sont pas imprimées avec plus de précision que leur source n’en "
                    + "permet.");
        }
        return Passage.of(sentences);
    }

    private static String sentence(Conversion conversion, Set<Unit> explained, PrintForm form) {
        int n = conversion.coins();
        String units = Grammar.list(conversion.units().stream().map(unit -> FrenchUnits.of(unit).plural()).toList());
        String what = printed(conversion) + " " + Grammar.is(n) + " " + Noun.of(conversion.kind()).with("noté", n)
                + (conversion.isDrawn() ? n == 1 ? " par une flèche" : " par des flèches" : " en " + units)
                + " et " + Noun.of(conversion.kind()).with("converti", n) + " ici en "
                + FrenchUnits.of(Units.normal(conversion.kind().dimension())).plural();
        List<String> factors = conversion.units().stream().filter(explained::add)
                .map(unit -> factor(unit, conversion.kind(), form)).toList();
        return factors.isEmpty() ? what + "." : what + " (" + String.join(Grammar.SEMICOLON, factors) + ").";
    }

    /** "Le poids imprimé pour une monnaie" */
    private static String printed(Conversion conversion) {
        Noun noun = Noun.of(conversion.kind());
        int n = conversion.coins();
        return Passage.capital(noun.the(n)) + " " + noun.with("imprimé", n) + " pour " + Noun.COIN.count(n);
    }

    private static String factor(Unit unit, Kind kind, PrintForm form) {
        if (unit.equals(Units.ARROW)) {
            return "les flèches marquent des huitièmes de tour, espacés d’une heure et demie";
        }
        if (kind == Kind.AXIS) {
            return "douze heures pour un tour complet";
        }
        return "1 " + FrenchUnits.of(unit).singular() + " = " + Conversion.factor(unit, form) + Grammar.NO_BREAK
                + Units.normal(kind.dimension()).symbol()
                + (unit.source().seen() ? ", " + FrenchUnits.of(unit).source() : "");
    }

    private static String sizes(Conversion conversion) {
        boolean one = conversion.coins() == 1;
        return printed(conversion) + (one ? " est noté comme module de " : " sont notés comme modules de ")
                + FrenchUnits.scale(conversion.scale().orElseThrow())
                + (one ? " et donné ici comme le diamètre de ce module (" : " et donnés ici comme les diamètres de ces modules (")
                + SizeScale.SOURCE + ", cité d’après " + SizeScale.QUOTED_BY + "), au mieux à un demi-millimètre près.";
    }
}
