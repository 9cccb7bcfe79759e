package exergue.edition.methods.german;

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
            sentences.add("Umgerechnete Werte sind nicht feiner gedruckt, als ihre Quelle es zulässt.");
        }
        return Passage.of(sentences);
    }

    private static String sentence(Conversion conversion, Set<Unit> explained, PrintForm form) {
        String units = Grammar.list(conversion.units().stream().map(unit -> GermanUnits.of(unit).plural()).toList());
        String what = printed(conversion) + " " + Grammar.is(conversion.coins()) + (conversion.isDrawn() ? " als Pfeile" : " in " + units)
                + " überliefert und hier in " + normal(conversion.kind()) + " umgerechnet";
        List<String> factors = conversion.units().stream().filter(explained::add)
                .map(unit -> factor(unit, conversion.kind(), form)).toList();
        return factors.isEmpty() ? what + "." : what + " (" + String.join("; ", factors) + ").";
    }

    /** In the accusative, which says into what. */
    private static String normal(Kind kind) {
        return kind == Kind.AXIS ? "Uhrstunden" : GermanUnits.of(Units.normal(kind.dimension())).singular();
    }

    /** "Das für eine Münze gedruckte Gewicht" */
    private static String printed(Conversion conversion) {
        int n = conversion.coins();
        return Passage.capital(Noun.of(conversion.kind()).the("für " + Noun.COIN.accusative(n) + " gedruckt", n));
    }

    private static String factor(Unit unit, Kind kind, PrintForm form) {
        if (unit.equals(Units.ARROW)) {
            return "Pfeile zeigen auf Achtel der Umdrehung, anderthalb Stunden auseinander";
        }
        if (kind == Kind.AXIS) {
            return "zwölf Stunden auf die volle Umdrehung";
        }
        return "1 " + GermanUnits.of(unit).singular() + " = " + Conversion.factor(unit, form) + Grammar.NO_BREAK
                + Units.normal(kind.dimension()).symbol()
                + (unit.source().seen() ? ", " + GermanUnits.of(unit).source() : "");
    }

    private static String sizes(Conversion conversion) {
        boolean one = conversion.coins() == 1;
        return printed(conversion) + (one ? " ist als Größe " : " sind als Größen ")
                + GermanUnits.scale(conversion.scale().orElseThrow())
                + (one ? " überliefert und hier als Durchmesser dieser Größe angegeben ("
                : " überliefert und hier als Durchmesser dieser Größen angegeben (")
                + SizeScale.SOURCE + ", zitiert nach " + SizeScale.QUOTED_BY + "), bestenfalls auf einen halben Millimeter genau.";
    }
}
