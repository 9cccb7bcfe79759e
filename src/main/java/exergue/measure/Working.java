package exergue.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Every step from the text of a reading to its print, as labelled lines for a reader to follow.
 *
 * @param lines  in the order of the work; a refused text has only what was recorded
 * @param parsed what came of it, with its remarks
 */
public record Working(List<Line> lines, Parsed parsed) {

    private static final BigDecimal TWO = new BigDecimal("2");
    private static final int SHOWN_DECIMALS = 12;
    private static final int WATER_DECIMALS = 5;

    /** @param label one or two plain words: "recorded", "factor" */
    public record Line(String label, String text) { }

    public Working {
        lines = List.copyOf(lines);
    }

    public static Working of(Kind kind, String text, Convention convention, PrintForm form) {
        Parsed parsed = ReadingParser.parse(kind, text, convention);
        List<Line> lines = new ArrayList<>();
        lines.add(new Line("recorded", text.strip()));
        lines.add(new Line("convention", convention.equals(Convention.UNDECLARED) ? "none given" : convention.title()));
        if (parsed instanceof Parsed.Accepted accepted) {
            told(accepted.reading(), convention, form, lines);
        }
        return new Working(lines, parsed);
    }

    /** The remarks on an accepted text, or the one that refused it. */
    public List<Remark> remarks() {
        return parsed instanceof Parsed.Accepted accepted ? accepted.remarks()
                : List.of(((Parsed.Refused) parsed).remark());
    }

    private static void told(Reading reading, Convention convention, PrintForm form, List<Line> lines) {
        if (reading instanceof Reading.Read read) {
            figures(read, convention, form, lines);
        } else if (reading instanceof Reading.Missing missing) {
            absent("missing", missing.why(), lines);
        } else if (reading instanceof Reading.NotApplicable none) {
            absent("not applicable", none.why(), lines);
        } else if (reading instanceof Reading.Illegible unread) {
            absent("illegible", unread.why(), lines);
        }
    }

    private static void absent(String what, String why, List<Line> lines) {
        lines.add(new Line("no figure", what));
        lines.add(new Line("reason", why));
    }

    private static void figures(Reading.Read read, Convention convention, PrintForm form, List<Line> lines) {
        if (read.weighedInWater()) {
            weighed(read, convention, lines);
        } else {
            recorded(read, lines);
        }
        if (read.kind() == Kind.AXIS && convention.turning().anticlockwise()) {
            lines.add(new Line("turning", "figures of this source count anticlockwise; the book counts clockwise"));
        }
        String unit = read.first().unit().symbol();
        lines.add(new Line("exact", both(read, quantity -> shown(quantity.value())) + " " + unit));
        lines.add(new Line("step", both(read, quantity -> shown(quantity.resolution())) + " " + unit));
        lines.add(new Line("interval", interval(read, unit)));
        lines.add(new Line("printed", Printer.print(read, form).text()));
        if (read.kind() == Kind.DENSITY) {
            fineness(read, lines);
        }
    }

    private static void recorded(Reading.Read read, List<Line> lines) {
        lines.add(new Line("read as", read.asRecorded().stream().map(Working::amount)
                .collect(Collectors.joining(joint(read)))));
        read.asRecorded().stream().map(Quantity::unit).distinct().filter(unit -> !unit.isNormal()).forEach(unit -> {
            lines.add(new Line("factor", factor(unit)));
            lines.add(new Line("its source", unit.source().noted()));
        });
    }

    private static void weighed(Reading.Read read, Convention convention, List<Line> lines) {
        Task task = new Task(Kind.DENSITY, TextMarks.of(read.recorded()), convention);
        if (WeighedInWater.weighings(task) instanceof Step.Done<Density.Weighings> done) {
            Density.Weighings weighed = done.value();
            lines.add(new Line("in air", amount(weighed.inAir())));
            lines.add(new Line("in water", amount(weighed.inWater())));
            Density.ofWater(weighed.celsius()).ifPresent(water -> lines.add(new Line("water", "at "
                    + weighed.celsius().toPlainString() + " °C " + water.setScale(WATER_DECIMALS, RoundingMode.HALF_EVEN) + " g/cm³")));
            lines.add(new Line("its source", Density.WATER_SOURCE));
            lines.add(new Line("air", Density.ROOM_AIR.toPlainString() + " g/cm³ (common practice, no source)"));
        }
    }

    /** What the density would mean for each alloy that is known, with its caution. */
    private static void fineness(Reading.Read read, List<Line> lines) {
        for (Alloy alloy : Alloy.all()) {
            alloy.fineness(read.first()).ifPresent(share -> lines.add(new Line("if " + alloy.id(),
                    share.text() + " " + alloy.heavier())));
        }
        lines.add(new Line("caution", Density.CAUTION));
    }

    private static String joint(Reading.Read read) {
        return switch (read.form()) {
            case SINGLE -> " + ";
            case TWO_WAY -> " × ";
            case RANGE -> " to ";
        };
    }

    private static String both(Reading.Read read, Function<Quantity, String> text) {
        List<String> texts = read.normal().stream().map(text).toList();
        return texts.stream().allMatch(texts.get(0)::equals) ? texts.get(0) : String.join(joint(read), texts);
    }

    private static String amount(Quantity quantity) {
        Unit unit = quantity.unit();
        if (unit.equals(Units.ARROW)) {
            return "the arrow " + TextMarks.arrow(quantity.value().intValueExact()) + ", " + counted(quantity);
        }
        if (SizeScale.of(unit).isPresent()) {
            return unit.name();
        }
        return counted(quantity);
    }

    private static String counted(Quantity quantity) {
        Unit unit = quantity.unit();
        return shown(quantity.value()) + " " + (quantity.value().compareTo(BigDecimal.ONE) == 0 ? unit.name() : unit.plural());
    }

    /** "1 grain = 0.06479891 g", "1 Paris ligne = 1000/443.296 mm". */
    public static String factor(Unit unit) {
        Ratio factor = unit.factor();
        String over = factor.denominator().compareTo(BigDecimal.ONE) == 0 ? "" : "/" + factor.denominator().toPlainString();
        String one = SizeScale.of(unit).isPresent() ? unit.name() : "1 " + unit.name();
        return one + " = " + factor.numerator().toPlainString() + over + " " + Units.normal(unit.dimension()).symbol();
    }

    /** Half a step either way, to one digit more than the source supports. */
    private static String interval(Reading.Read read, String unit) {
        switch (read.qualifier()) {
            case ABOUT, UNCERTAIN:
                return "wider than its step: the record itself is not sure";
            case LESS_THAN, MORE_THAN:
                return "open: the record gives only a bound";
            default:
                return read.normal().stream().map(Working::ends).collect(Collectors.joining("; ")) + " " + unit;
        }
    }

    private static String ends(Quantity quantity) {
        BigDecimal half = quantity.resolution().divide(TWO, Ratio.CARRIED);
        int decimals = Math.max(0, quantity.resolution().scale() - quantity.resolution().precision() + 1) + 1;
        return end(quantity, half.negate(), decimals) + " to " + end(quantity, half, decimals);
    }

    private static String end(Quantity quantity, BigDecimal way, int decimals) {
        BigDecimal end = quantity.value().add(way);
        BigDecimal shown = quantity.unit().equals(Units.HOUR) ? Axis.onClock(end) : end;
        return shown.setScale(decimals, RoundingMode.HALF_EVEN).toPlainString();
    }

    private static String shown(BigDecimal value) {
        boolean endless = value.scale() > SHOWN_DECIMALS;
        return endless ? value.setScale(SHOWN_DECIMALS, RoundingMode.DOWN).toPlainString() + "…" : value.toPlainString();
    }
}
