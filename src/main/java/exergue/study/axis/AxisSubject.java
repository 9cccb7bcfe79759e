package exergue.study.axis;

import exergue.study.figure.Exhibit;
import exergue.study.figure.Request;
import exergue.study.figure.Subject;
import exergue.study.figure.Wording;
import exergue.study.group.Coins;
import java.util.List;
import java.util.Optional;

/** Die-axes of groups. */
public final class AxisSubject implements Subject {

    /** Dials that stand on a page with their caption, four in a row. */
    private static final int DIALS = 12;
    /** Each with each of the others: 28 pairs. */
    private static final int COMPARED = 8;

    @Override
    public String word() {
        return "axes";
    }

    @Override
    public List<String> forms() {
        return List.of("table", "hours", "rose", COMPARISON);
    }

    @Override
    public Optional<Exhibit> show(String form, Request request) {
        if (request.groups().stream().allMatch(group -> group.axes().length == 0)) {
            return Optional.empty();
        }
        return switch (form) {
            case "table" -> Optional.of(new AxisTables(request).summary());
            case "hours" -> Optional.of(new AxisTables(request).hours());
            case "rose" -> Optional.of(new AxisTables(request).rose());
            case COMPARISON -> Optional.of(new AxisComparison(request)).filter(comparison -> !comparison.isEmpty())
                    .map(AxisComparison::table);
            default -> throw new IllegalArgumentException(form);
        };
    }

    @Override
    public int most(String form) {
        return switch (form) {
            case "rose" -> DIALS;
            case COMPARISON -> COMPARED;
            default -> Integer.MAX_VALUE;
        };
    }

    @Override
    public List<String> figures() {
        return List.of("axes", "mean axis", "axes within an hour", "resultant length", "probability of random axes", "firmness of axes");
    }

    @Override
    public String figure(String name, Coins coins, Wording wording) {
        Axes axes = Axes.of(coins.axes());
        boolean none = axes.n() == 0;
        return switch (name) {
            case "axes" -> String.valueOf(axes.n());
            case "mean axis" -> wording.with(AxisTables.mean(axes, wording), wording.form().hourSign());
            case "axes within an hour" -> String.valueOf(axes.withinAnHour());
            case "resultant length" -> none ? Wording.NONE : wording.number(axes.inTwoDirections() ? axes.rDoubled() : axes.r(), 2);
            case "probability of random axes" -> none ? Wording.NONE
                    : wording.probability(axes.inTwoDirections() ? axes.doubled().rayleigh() : axes.one().rayleigh());
            case "firmness of axes" -> wording.of(axes.verdict().word());
            default -> throw new IllegalArgumentException(name);
        };
    }
}
