package exergue.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One row of the table of agreement, in words as printed; a column that does not apply is empty.
 *
 * @param hands         ids of the two conventions: "bench-2024 − hallam-1931"
 * @param what          "weight, g", "diameter, mm", "axis"; of diameters in different directions "diameter, mm,
 *                      greatest − top to bottom"
 * @param n             coins read by both
 * @param bias          mean difference
 * @param sd            standard deviation of the differences
 * @param limits        limits of agreement
 * @param equal         share of equal axes
 * @param withinOneHour share of axes an hour apart or less
 */
public record AgreementRow(String hands, String what, String n, String bias, String sd, String limits, String equal,
                           String withinOneHour) {

    /** Heads of the columns. */
    public static final AgreementRow HEAD = new AgreementRow("hands", "figures", "coins", "mean difference", "SD",
            "limits of agreement", "equal", "within 1 h");

    static List<AgreementRow> of(TwoHands pair) {
        String hands = pair.first().id() + " − " + pair.second().id();
        List<AgreementRow> rows = new ArrayList<>();
        if (!pair.weights().isEmpty()) {
            rows.add(of(hands, "weight, g", pair.weights().size(), pair.weight(), 3));
        }
        if (!pair.diameters().isEmpty()) {
            rows.add(of(hands, diameter(pair), pair.diameters().size(), pair.diameter(), 2));
        }
        AxisAgreement axes = pair.axes();
        if (axes.n() > 0) {
            rows.add(new AgreementRow(hands, "axis", "" + axes.n(), "", "", "", share(axes.equal(), axes.n()),
                    share(axes.withinOneHour(), axes.n())));
        }
        return rows;
    }

    private static String diameter(TwoHands pair) {
        return "diameter, mm" + (pair.inDifferentDirections() ? ", " + pair.first().sizing().direction().word() + " − "
                + pair.second().sizing().direction().word() : "");
    }

    private static AgreementRow of(String hands, String what, int n, Optional<Differences> differences, int decimals) {
        return differences.map(d -> new AgreementRow(hands, what, "" + n, Figure.words(d.bias(), decimals),
                        Figure.words(d.sd(), decimals),
                        Figure.words(d.lower(), decimals) + " to " + Figure.words(d.upper(), decimals), "", ""))
                .orElse(new AgreementRow(hands, what, "" + n, "too few", "", "", "", ""));
    }

    private static String share(int part, int n) {
        return part + " (" + Figure.words(100.0 * part / n, 0) + " %)";
    }
}
