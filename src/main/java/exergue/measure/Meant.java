package exergue.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What may have been meant by a figure, had a {@link Slip} crept in.
 *
 * @param slip   what would have happened
 * @param text   the figure that would have been meant: "3.78 g"
 * @param normal its value in the normal unit of its kind
 */
public record Meant(Slip slip, String text, BigDecimal normal) {

    /** Units whose figures are most often taken for each other; by id in {@link Units}. */
    private static final List<String> CONFUSED_WEIGHTS = List.of("gram", "grain", "pennyweight");
    private static final List<String> CONFUSED_LENGTHS = List.of("millimetre", "inch");

    /** Digits of like shape in hand and print; common practice, no source. */
    private static final List<String> LIKE = List.of("17", "38", "56", "06", "68", "49", "35", "27");

    private static final BigDecimal SIX = BigDecimal.valueOf(6);

    /** The figure that would have been meant, for a message: “59.7 gr”, which is 3.87 g. */
    public String quoted(Unit normalUnit) {
        boolean converted = !text.endsWith(" " + normalUnit.symbol());
        return "“" + text + "”" + (converted
                ? ", which is " + normal.setScale(2, RoundingMode.HALF_EVEN).toPlainString() + " " + normalUnit.symbol() : "");
    }

    /** Every figure that a slip could have turned into this reading, likelier slips first. */
    public static List<Meant> by(Reading.Read reading) {
        if (reading.form() != Reading.Form.SINGLE || reading.asRecorded().size() != 1) {
            return List.of();
        }
        Quantity recorded = reading.asRecorded().get(0);
        if (reading.kind() == Kind.AXIS) {
            return turned(reading.first().value());
        }
        List<Meant> all = new ArrayList<>(inOtherUnits(reading.kind(), recorded));
        all.add(of(Slip.DECIMAL_POINT, recorded.value().movePointLeft(1), recorded.unit()));
        all.add(of(Slip.DECIMAL_POINT, recorded.value().movePointRight(1), recorded.unit()));
        String figure = recorded.value().toPlainString();
        for (String swapped : swapped(figure)) {
            all.add(of(Slip.DIGITS_SWAPPED, new BigDecimal(swapped), recorded.unit()));
        }
        for (String misread : misread(figure)) {
            all.add(of(Slip.DIGIT_MISREAD, new BigDecimal(misread), recorded.unit()));
        }
        return all;
    }

    private static List<Meant> turned(BigDecimal hour) {
        return List.of(of(Slip.MIRRORED, Axis.mirrored(hour), Units.HOUR),
                of(Slip.UP_AND_DOWN, Axis.onClock(hour.add(SIX)), Units.HOUR));
    }

    private static List<Meant> inOtherUnits(Kind kind, Quantity recorded) {
        List<Meant> all = new ArrayList<>();
        List<String> confused = switch (kind.dimension()) {
            case MASS -> CONFUSED_WEIGHTS;
            case LENGTH -> CONFUSED_LENGTHS;
            default -> List.of();
        };
        for (String id : confused) {
            Optional<Unit> unit = Units.byId(id).filter(other -> !other.equals(recorded.unit()));
            unit.ifPresent(other -> all.add(of(Slip.OTHER_UNIT, recorded.value(), other)));
        }
        return all;
    }

    private static Meant of(Slip slip, BigDecimal figure, Unit unit) {
        return new Meant(slip, figure.toPlainString() + " " + unit.symbol(), unit.factor().times(figure));
    }

    private static Set<String> swapped(String figure) {
        Set<String> all = new LinkedHashSet<>();
        int last = -1;
        for (int i = 0; i < figure.length(); i++) {
            if (Character.isDigit(figure.charAt(i))) {
                if (last >= 0 && figure.charAt(last) != figure.charAt(i)) {
                    StringBuilder other = new StringBuilder(figure);
                    other.setCharAt(last, figure.charAt(i));
                    other.setCharAt(i, figure.charAt(last));
                    all.add(other.toString());
                }
                last = i;
            }
        }
        return all;
    }

    private static Set<String> misread(String figure) {
        Set<String> all = new LinkedHashSet<>();
        for (int i = 0; i < figure.length(); i++) {
            for (String pair : LIKE) {
                int at = pair.indexOf(figure.charAt(i));
                if (at >= 0) {
                    StringBuilder other = new StringBuilder(figure);
                    other.setCharAt(i, pair.charAt(1 - at));
                    all.add(other.toString());
                }
            }
        }
        return all;
    }
}
