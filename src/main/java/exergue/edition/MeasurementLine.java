package exergue.edition;

import exergue.edition.Specimen.Cell;
import exergue.measure.Kind;
import exergue.measure.Printer;
import exergue.measure.Reading;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.HouseStyle;
import exergue.model.ReadingChoice;
import exergue.model.ReadingChoice.Chosen;
import exergue.model.ReadingChoice.Status;
import exergue.model.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The measurement line of a coin: {@code 3.87 g, 18 mm, 6 h}.
 *
 * <p>Which reading is printed is {@link ReadingChoice}'s business, how its figure looks {@link Printer}'s. Here the
 * house's order, separator, marks and signs come in. The sign for damage stands after a weight that is left out of
 * weight statistics; the sign for another hand after any figure that was not read under the main convention. A member
 * whose mark is empty (the house's way of printing "not applicable") disappears with its separator; so does a thickness, density or surface that nobody gives.
 */
public final class MeasurementLine {

    /** Keeps a sign off a raised figure of the unit. */
    private static final String NARROW_SPACE = "\u202F";

    private final HouseStyle style;
    private final ReadingChoice choice;
    private final Optional<String> main;

    private MeasurementLine(HouseStyle style, ReadingChoice choice, Optional<String> main) {
        this.style = style;
        this.choice = choice;
        this.main = main;
    }

    public static MeasurementLine of(Catalogue catalogue, Map<String, Type> types) {
        ReadingChoice choice = ReadingChoice.of(catalogue.style());
        return new MeasurementLine(catalogue.style(), choice, choice.mainConvention(catalogue, types));
    }

    /** Member by member, in the house's order. */
    public List<Cell> cells(Coin coin, Type type) {
        List<Cell> cells = new ArrayList<>();
        for (Kind kind : style.order()) {
            Chosen chosen = choice.choose(coin, type, kind);
            if (chosen.status() != Status.NOT_GIVEN) {
                cells.add(cell(coin, chosen));
            }
        }
        return withSeparators(cells);
    }

    /** The same in one string; a space inside a member never breaks. */
    public static String line(List<Cell> cells) {
        StringBuilder line = new StringBuilder();
        for (Cell cell : cells) {
            line.append(cell.text()).append(cell.after());
        }
        return line.toString();
    }

    /** What is printed of one kind, wherever it is printed; empty where nothing is. */
    String member(Coin coin, Type type, Kind kind) {
        Chosen chosen = choice.choose(coin, type, kind);
        return chosen.status() == Status.NOT_GIVEN ? "" : cell(coin, chosen).text();
    }

    private Cell cell(Coin coin, Chosen chosen) {
        Optional<Reading.Read> figure = chosen.figure();
        if (figure.isEmpty()) {
            return new Cell(chosen.kind(), mark(chosen), "", "", "", "");
        }
        Printer.Printed printed = Printer.print(figure.get(), style.form());
        String space = printed.unit().isEmpty() ? "" : style.form().unitSpace();
        String signs = signs(coin, chosen);
        boolean raised = !signs.isEmpty() && printed.unit().matches(".*[²³]");
        return new Cell(chosen.kind(), printed.figure(), printed.unit(), space, raised ? NARROW_SPACE + signs : signs, "");
    }

    private String mark(Chosen chosen) {
        return switch (chosen.status()) {
            case NOT_APPLICABLE -> style.notApplicable();
            case ILLEGIBLE -> style.illegible();
            default -> style.missing();
        };
    }

    private String signs(Coin coin, Chosen chosen) {
        String damaged = chosen.kind() == Kind.WEIGHT && !coin.weightInStatistics() ? style.signs().damaged() : "";
        String otherHand = chosen.by().equals(main) ? "" : style.signs().otherHand();
        return damaged + otherHand;
    }

    /** A separator stands between two members that print something. */
    private List<Cell> withSeparators(List<Cell> cells) {
        List<Cell> separated = new ArrayList<>(cells);
        boolean moreFollows = false;
        for (int i = cells.size() - 1; i >= 0; i--) {
            Cell cell = cells.get(i);
            boolean prints = !cell.text().isEmpty();
            if (prints && moreFollows) {
                separated.set(i, new Cell(cell.kind(), cell.figure(), cell.unit(), cell.space(), cell.sign(),
                        style.separator()));
            }
            moreFollows |= prints;
        }
        return List.copyOf(separated);
    }
}
