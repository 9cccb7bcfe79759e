package exergue.edition.methods.english;

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
            sentences.add(conversion.scale().isPresent() ? sizes(conversion) : sentence(conversion, explained, tally.style().form()));
            weightsOrSizes |= conversion.kind() != Kind.AXIS;
        }
        if (weightsOrSizes) {
            sentences.add("Converted figures are printed no finer than their source supports.");
        }
        return Passage.of(sentences);
    }

    private static String sentence(Conversion conversion, Set<Unit> explained, PrintForm form) {
        String noun = Grammar.agree(conversion.coins(), Grammar.noun(conversion.kind()));
        String is = Grammar.is(conversion.coins());
        String units = Grammar.list(conversion.units().stream().map(Unit::plural).toList());
        String what = "The " + noun + " printed for " + Grammar.count(conversion.coins(), "coin") + " " + is + " recorded "
                + (conversion.isDrawn() ? "as arrows" : "in " + units) + " and " + is + " given here in " + normal(conversion.kind());
        List<String> factors = conversion.units().stream().filter(explained::add)
                .map(unit -> factor(unit, conversion.kind(), form)).toList();
        return factors.isEmpty() ? what + "." : what + " (" + String.join("; ", factors) + ").";
    }

    private static String factor(Unit unit, Kind kind, PrintForm form) {
        if (kind == Kind.AXIS) {
            return unit.equals(Units.ARROW) ? "arrows point to eighths of a turn, one and a half hours apart"
                    : "twelve hours to the full turn";
        }
        return "1 " + unit.name() + " = " + Conversion.factor(unit, form) + Grammar.NO_BREAK
                + Units.normal(kind.dimension()).symbol()
                + (unit.source().seen() ? ", " + unit.source().text() : "");
    }

    private static String sizes(Conversion conversion) {
        boolean one = conversion.coins() == 1;
        return "The " + Grammar.agree(conversion.coins(), Grammar.noun(conversion.kind())) + " printed for "
                + Grammar.count(conversion.coins(), "coin")
                + (one ? " is recorded as a size of " : " are recorded as sizes of ")
                + conversion.scale().orElseThrow().title() + " and given here as the "
                + (one ? "diameter of that size (" : "diameters of those sizes (") + SizeScale.SOURCE + ", as quoted by "
                + SizeScale.QUOTED_BY + "), good to half a millimetre at best.";
    }

    private static String normal(Kind kind) {
        return switch (kind) {
            case WEIGHT -> "grams";
            case AXIS -> "clock hours";
            case DIAMETER, THICKNESS -> "millimetres";
            case DENSITY -> "grams per cubic centimetre";
            case SURFACE -> "square millimetres";
        };
    }
}
