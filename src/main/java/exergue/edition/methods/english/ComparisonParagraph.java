package exergue.edition.methods.english;

import exergue.edition.methods.MethodsParagraph;
import exergue.edition.methods.Passage;
import exergue.edition.methods.Tally;
import exergue.measure.Convention;
import exergue.measure.PrintForm;
import exergue.study.Agreement;
import exergue.study.AxisAgreement;
import exergue.study.Differences;
import exergue.study.TwoHands;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** How far the main source agrees with the others: a sentence for one of them, a table for several. */
final class ComparisonParagraph implements MethodsParagraph {

    private static final String MINUS = "\u2212";
    private static final String NONE = "–";

    @Override
    public List<Passage> passages(Tally tally) {
        Agreement agreement = tally.agreement();
        if (agreement.pairs().size() < 2) {
            return Passage.of(agreement.sentences());
        }
        return List.of(new Passage.Sentences("", introduction(agreement.pairs())), table(agreement.pairs(), tally));
    }

    private static List<String> introduction(List<TwoHands> pairs) {
        String main = pairs.get(0).first().title();
        List<String> sentences = new ArrayList<>();
        sentences.add("The table compares the main source, " + main + ", with each of the others, over the coins that "
                + "both have measured.");
        sentences.add("A difference is the figure of the main source less that of the other, so that a minus sign means "
                + "that the other is the higher; the limits of agreement are the mean difference less and plus two "
                + "standard deviations, after J." + Grammar.NO_BREAK + "M. Bland and D." + Grammar.NO_BREAK
                + "G. Altman, Lancet 327 (1986), 307–310.");
        if (pairs.stream().anyMatch(pair -> pair.inDifferentDirections() && pair.diameter().isPresent())) {
            sentences.add("Where two sources took the diameter along different lines, that is part of their "
                    + "difference.");
        }
        return sentences;
    }

    private static Passage table(List<TwoHands> pairs, Tally tally) {
        PrintForm form = tally.style().form();
        List<String> heads = new ArrayList<>(List.of("Source"));
        List<List<String>> rows = new ArrayList<>();
        pairs.forEach(pair -> rows.add(new ArrayList<>(List.of(name(pair.second(), tally)))));
        if (pairs.stream().anyMatch(pair -> pair.weight().isPresent())) {
            heads.addAll(List.of("Weights", "mean difference (g)", "limits (g)"));
            add(pairs, pair -> differences(pair.weights().size(), pair.weight(), 2, form), rows);
        }
        if (pairs.stream().anyMatch(pair -> pair.diameter().isPresent())) {
            heads.addAll(List.of("Diameters", "mean difference (mm)", "limits (mm)"));
            add(pairs, pair -> differences(pair.diameters().size(), pair.diameter(), 1, form), rows);
        }
        if (pairs.stream().anyMatch(pair -> pair.axes().n() > 0)) {
            heads.addAll(List.of("Die-axes", "equal", "within 1" + Grammar.NO_BREAK + form.hourSign()));
            add(pairs, pair -> axes(pair.axes()), rows);
        }
        return new Passage.Table(heads, rows);
    }

    /** The sign of the work where there is one: the paragraph on that source has told what it is. */
    private static String name(Convention other, Tally tally) {
        return tally.hands().stream().filter(hand -> hand.convention().id().equals(other.id()))
                .flatMap(hand -> hand.work().stream()).map(work -> work.sign().value()).findFirst()
                .orElse(Grammar.capital(other.title()));
    }

    private static void add(List<TwoHands> pairs, Function<TwoHands, List<String>> cells, List<List<String>> rows) {
        for (int i = 0; i < pairs.size(); i++) {
            rows.get(i).addAll(cells.apply(pairs.get(i)));
        }
    }

    private static List<String> differences(int coins, Optional<Differences> found, int decimals, PrintForm form) {
        return found.map(differences -> differences.rounded(decimals))
                .map(rounded -> List.of(String.valueOf(coins), signed(rounded.mean(), form),
                        signed(rounded.lower(), form) + Grammar.NO_BREAK + "to" + Grammar.NO_BREAK
                                + signed(rounded.upper(), form)))
                .orElse(List.of(String.valueOf(coins), NONE, NONE));
    }

    private static List<String> axes(AxisAgreement axes) {
        return axes.n() == 0 ? List.of("0", NONE, NONE) : List.of(String.valueOf(axes.n()),
                String.valueOf(axes.equal()), String.valueOf(axes.withinOneHour()));
    }

    private static String signed(BigDecimal value, PrintForm form) {
        String sign = value.signum() < 0 ? MINUS : value.signum() > 0 ? "+" : "";
        return sign + value.abs().toPlainString().replace(".", form.decimalMark());
    }
}
