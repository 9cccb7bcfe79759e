package exergue.edition.methods;

import exergue.measure.Convention;
import exergue.measure.PrintForm;
import exergue.study.AxisAgreement;
import exergue.study.Differences;
import exergue.study.TwoHands;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The table that compares the main source with each of the others. */
public final class ComparisonTable {

    private static final String MINUS = "\u2212";
    private static final String NONE = "–";
    private static final String NO_BREAK = "\u00A0";
    private static final String UNBROKEN_HYPHEN = "\u2011";

    /** In a sentence, for the number that this table has in the book. */
    public static final String NUMBER = "{table}";

    private final Words words;
    private final List<TwoHands> pairs;
    private final Tally tally;
    private final PrintForm form;

    /**
     * Words of the table in a language.
     *
     * @param caption        what the table shows
     * @param source         head of the first column
     * @param weights        heads of its three columns: how many, mean difference, limits
     * @param diameters      likewise
     * @param axes           heads of its three columns: how many, how many equal, how many within an hour, with {h} for the sign of hours
     * @param to             between the two limits
     */
    public record Words(String caption, String source, List<String> weights, List<String> diameters, List<String> axes, String to) {

        public Words {
            weights = List.copyOf(weights);
            diameters = List.copyOf(diameters);
            axes = List.copyOf(axes);
        }
    }

    private ComparisonTable(Words words, Tally tally) {
        this.words = words;
        this.pairs = tally.agreement().pairs();
        this.tally = tally;
        this.form = tally.style().form();
    }

    public static Passage of(Tally tally, Words words) {
        return new ComparisonTable(words, tally).table();
    }

    private Passage table() {
        List<String> heads = new ArrayList<>(List.of(words.source()));
        List<List<String>> rows = new ArrayList<>();
        pairs.forEach(pair -> rows.add(new ArrayList<>(List.of(name(pair.second())))));
        if (pairs.stream().anyMatch(pair -> pair.weight().isPresent())) {
            heads.addAll(words.weights());
            add(pair -> differences(pair.weights().size(), pair.weight(), 2), rows);
        }
        if (pairs.stream().anyMatch(pair -> pair.diameter().isPresent())) {
            heads.addAll(words.diameters());
            add(pair -> differences(pair.diameters().size(), pair.diameter(), 1), rows);
        }
        if (pairs.stream().anyMatch(pair -> pair.axes().n() > 0)) {
            words.axes().forEach(head -> heads.add(head.replace("{h}", form.hourSign())));
            add(pair -> axes(pair.axes()), rows);
        }
        return new Passage.Table(words.caption(), heads.stream().map(head -> head.replace("-", UNBROKEN_HYPHEN)).toList(), rows);
    }

    /** The sign of the work or the short title where there is one: the paragraph on that source has told what it is. */
    private String name(Convention other) {
        return tally.hands().stream().filter(hand -> hand.convention().id().equals(other.id()))
                .flatMap(hand -> hand.sign().stream()).findFirst()
                .orElse(inTwoLines(Passage.capital(other.title())));
    }

    /** With one place only where the line may end, about the middle, so that a long name makes no column of single words. */
    private static String inTwoLines(String name) {
        int middle = name.indexOf(' ', Math.max(0, name.length() / 2 - 4));
        return middle < 0 ? name : name.substring(0, middle).replace(" ", NO_BREAK) + name.substring(middle, middle + 1)
                + name.substring(middle + 1).replace(" ", NO_BREAK);
    }

    private void add(Function<TwoHands, List<String>> cells, List<List<String>> rows) {
        for (int i = 0; i < pairs.size(); i++) {
            rows.get(i).addAll(cells.apply(pairs.get(i)));
        }
    }

    private List<String> differences(int coins, Optional<Differences> found, int decimals) {
        return found.map(differences -> differences.rounded(decimals))
                .map(rounded -> List.of(String.valueOf(coins), signed(rounded.mean(), form),
                        signed(rounded.lower(), form) + NO_BREAK + words.to() + NO_BREAK
                                + signed(rounded.upper(), form)))
                .orElse(List.of(String.valueOf(coins), NONE, NONE));
    }

    private static List<String> axes(AxisAgreement axes) {
        return axes.n() == 0 ? List.of("0", NONE, NONE) : List.of(String.valueOf(axes.n()),
                String.valueOf(axes.equal()), String.valueOf(axes.withinOneHour()));
    }

    /** With a plus or a true minus; nought has neither. */
    public static String signed(BigDecimal value, PrintForm form) {
        String sign = value.signum() < 0 ? MINUS : value.signum() > 0 ? "+" : "";
        return sign + form.decimal(value.abs());
    }
}
