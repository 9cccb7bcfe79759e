package exergue.edition.methods.italian;

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
            sentences.add("I valori convertiti non sono stampati con precisione maggiore di quella che la loro fonte "
                    + "consente.");
        }
        return Passage.of(sentences);
    }

    private static String sentence(Conversion conversion, Set<Unit> explained, PrintForm form) {
        int n = conversion.coins();
        Noun noun = Noun.of(conversion.kind());
        String units = Grammar.list(conversion.units().stream().map(unit -> ItalianUnits.of(unit).plural()).toList());
        String what = printed(conversion) + " " + Grammar.is(n) + " " + noun.with("annotat", n)
                + (conversion.isDrawn() ? n == 1 ? " con una freccia" : " con frecce" : " in " + units)
                + (n == 1 ? " ed è qui " : " e sono qui ") + noun.with("convertit", n) + " in "
                + ItalianUnits.of(Units.normal(conversion.kind().dimension())).plural();
        List<String> factors = conversion.units().stream().filter(explained::add)
                .map(unit -> factor(unit, conversion.kind(), form)).toList();
        return factors.isEmpty() ? what + "." : what + " (" + String.join("; ", factors) + ").";
    }

    /** "Il peso stampato per una moneta" */
    private static String printed(Conversion conversion) {
        Noun noun = Noun.of(conversion.kind());
        int n = conversion.coins();
        return Passage.capital(noun.the(n)) + " " + noun.with("stampat", n) + " per " + Noun.COIN.count(n);
    }

    private static String factor(Unit unit, Kind kind, PrintForm form) {
        if (unit.equals(Units.ARROW)) {
            return "le frecce indicano ottavi di giro, distanti fra loro un’ora e mezza";
        }
        if (kind == Kind.AXIS) {
            return "dodici ore per il giro completo";
        }
        return "1 " + ItalianUnits.of(unit).singular() + " = " + Conversion.factor(unit, form) + Grammar.NO_BREAK
                + Units.normal(kind.dimension()).symbol()
                + (unit.source().seen() ? ", " + ItalianUnits.of(unit).source() : "");
    }

    private static String sizes(Conversion conversion) {
        boolean one = conversion.coins() == 1;
        return printed(conversion) + (one ? " è annotato come modulo " : " sono annotati come moduli ")
                + ItalianUnits.scale(conversion.scale().orElseThrow())
                + (one ? " ed è qui dato come diametro di quel modulo (" : " e sono qui dati come diametri di quei moduli (")
                + SizeScale.SOURCE + ", citato da " + SizeScale.QUOTED_BY + "), con un’approssimazione di mezzo millimetro nel migliore dei casi.";
    }
}
