package exergue.check;

import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.measure.Meant;
import exergue.measure.Quantity;
import exergue.measure.Reading;
import exergue.model.Written;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * Two hands' figures for one coin.
 *
 * @param first  the one that stands first in the entry
 * @param second the other
 */
public record TwoReadings(Kind kind, One first, One second) {

    /** Two balances, a coin cleaned or not: weights of sound coins repeat to this. Common practice, no source. */
    private static final BigDecimal WEIGHT_GRAMS = new BigDecimal("0.02");
    /** The same for heavy coins and for densities, as a share of the figure. */
    private static final BigDecimal WEIGHT_SHARE = new BigDecimal("0.01");
    /** Outlines drawn by two people, as a share of the surface. Common practice, no source. */
    private static final BigDecimal SURFACE_SHARE = new BigDecimal("0.05");
    /** Diameters in one and the same direction. Common practice, no source. */
    private static final BigDecimal DIAMETER_SAME = new BigDecimal("0.5");
    /** Diameters in different directions, or in directions nobody names. Common practice, no source. */
    private static final BigDecimal DIAMETER_OTHER = BigDecimal.ONE;
    /** More than this no two directions across a flan that is nearly round explain. Common practice, no source. */
    private static final BigDecimal DIRECTIONS_EXPLAIN = BigDecimal.valueOf(2);
    /** An axis is judged by eye to the hour; this already holds the rounding. Common practice, no source. */
    private static final BigDecimal AXIS_HOURS = BigDecimal.ONE;
    /** How near the axis that was meant must lie, so that a reading in degrees is recognised too. */
    private static final BigDecimal HALF = new BigDecimal("0.5");
    /** How much of the gap a slip may leave: one that explains less than four fifths of it is a coincidence. */
    private static final BigDecimal UNEXPLAINED = new BigDecimal("0.2");
    /** How near the weight that was meant must come, as a share of it. */
    private static final BigDecimal SLIP_SHARE = new BigDecimal("0.02");
    private static final BigDecimal TWELVE = BigDecimal.valueOf(12);

    /** One hand's figure. */
    public record One(Hand hand, Written<Reading> written, Reading.Read read) {

        /** The step of the figure or, where that is coarser, of the instrument: "0.70 in" off a rule of sixteenths. */
        BigDecimal step(Kind kind) {
            Convention convention = hand.measurement().convention();
            Optional<BigDecimal> instrument = switch (kind) {
                case WEIGHT -> convention.weighing().resolution();
                case DIAMETER, THICKNESS -> convention.sizing().resolution();
                case AXIS, DENSITY, SURFACE -> Optional.empty();
            };
            BigDecimal figure = read.first().resolution();
            return instrument.map(figure::max).orElse(figure);
        }

        /** The figure as it stands in the entry, and in the normal unit where that is another. */
        public String said() {
            Quantity figure = read.first();
            return "“" + read.recorded() + "”" + (read.converted() && read.form() == Reading.Form.SINGLE
                    ? " (" + plain(figure.value()) + " " + figure.unit().symbol() + ")" : "");
        }
    }

    /** How far the figures are apart, in the normal unit; 0 where two spans overlap. */
    public BigDecimal apart() {
        if (kind == Kind.AXIS) {
            return onTheClock(first.read().first().value(), second.read().first().value());
        }
        BigDecimal above = least(second.read()).subtract(greatest(first.read()));
        BigDecimal below = least(first.read()).subtract(greatest(second.read()));
        return above.max(below).max(BigDecimal.ZERO);
    }

    /** How far apart two such figures may be: half a step of each for its rounding, and the usual spread. */
    public BigDecimal allowed() {
        return switch (kind) {
            case AXIS -> AXIS_HOURS;
            case WEIGHT -> rounding().add(WEIGHT_GRAMS.max(greatest().multiply(WEIGHT_SHARE)));
            case DENSITY -> rounding().add(greatest().multiply(WEIGHT_SHARE));
            case SURFACE -> rounding().add(greatest().multiply(SURFACE_SHARE));
            case DIAMETER, THICKNESS -> rounding().add(sameDirection() ? DIAMETER_SAME : DIAMETER_OTHER);
        };
    }

    /** How far apart, as a share of the greater figure; not for axes. */
    public BigDecimal share() {
        return apart().divide(greatest(), MathContext.DECIMAL64);
    }

    public boolean disagree() {
        return apart().compareTo(allowed()) > 0;
    }

    /** True where both hands say in which direction they measured, and it is the same. */
    public boolean sameDirection() {
        Convention.Direction direction = first.hand().measurement().convention().sizing().direction();
        return direction != Convention.Direction.NOT_SAID
                && direction == second.hand().measurement().convention().sizing().direction();
    }

    /** True where two diameters may differ because they were taken in different directions, and not by too much for that. */
    public boolean directionsMayExplain() {
        return kind == Kind.DIAMETER && !sameDirection() && apart().compareTo(DIRECTIONS_EXPLAIN) <= 0;
    }

    /** The slip by which the figure of {@code slipped} can stand for that of {@code other}, if there is one. */
    public Optional<Meant> slip(One slipped, One other) {
        BigDecimal target = other.read().first().value();
        BigDecimal near = switch (kind) {
            case AXIS -> HALF;
            case WEIGHT -> allowed().min(apart().multiply(UNEXPLAINED)).min(rounding().add(target.multiply(SLIP_SHARE)));
            default -> allowed().min(apart().multiply(UNEXPLAINED));
        };
        return Meant.by(slipped.read()).stream()
                .filter(meant -> distance(meant.normal(), target).compareTo(near) <= 0)
                .findFirst();
    }

    private BigDecimal distance(BigDecimal a, BigDecimal b) {
        return kind == Kind.AXIS ? onTheClock(a, b) : a.subtract(b).abs();
    }

    private BigDecimal greatest() {
        return greatest(first.read()).max(greatest(second.read()));
    }

    private BigDecimal rounding() {
        return first.step(kind).add(second.step(kind)).multiply(HALF);
    }

    private static BigDecimal onTheClock(BigDecimal a, BigDecimal b) {
        BigDecimal one = a.subtract(b).abs().remainder(TWELVE);
        return one.min(TWELVE.subtract(one));
    }

    private static BigDecimal least(Reading.Read read) {
        return read.normal().stream().map(Quantity::value).min(BigDecimal::compareTo).orElseThrow();
    }

    private static BigDecimal greatest(Reading.Read read) {
        return read.normal().stream().map(Quantity::value).max(BigDecimal::compareTo).orElseThrow();
    }

    /** At most two decimals, without empty ones. */
    static String plain(BigDecimal value) {
        BigDecimal rounded = value.setScale(2, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return rounded.setScale(Math.max(0, rounded.scale()), RoundingMode.UNNECESSARY).toPlainString();
    }

    /** {@link #apart()} in words: "0.09 g". */
    public String apartInWords() {
        return plain(apart()) + " " + first.read().first().unit().symbol();
    }
}
