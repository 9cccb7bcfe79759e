package exergue.demo;

import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.measure.Reading;
import exergue.model.Coin;
import exergue.model.Making;
import exergue.model.Measurement;
import exergue.model.Shape;
import exergue.model.Type;
import java.awt.Font;
import java.util.Optional;
import java.util.Random;

/** A coin of the demonstration catalogue as its entry describes it: its flan agrees with the recorded figures. */
final class DemoCoin {

    private final Coin coin;
    private final Type type;
    private final Font face;
    private final Fate fate;
    private final long seed;
    final DrawnCoin drawn;

    DemoCoin(Coin coin, Type type, Font face) {
        this.coin = coin;
        this.type = type;
        this.face = face;
        this.fate = new Fate(coin);
        this.seed = coin.id().value().hashCode() * 7919L + 3;
        Flan flan = flan();
        double size = flan.greatest();
        Metal metal = Metal.valueOf(type.metal().value().toUpperCase(java.util.Locale.ROOT).replace('-', '_'));
        this.drawn = new DrawnCoin(flan, axis(), metal, perMm(size), size > 30 ? 0.9 : 0.7, seed);
    }

    String id() {
        return coin.id().value();
    }

    /** Small coins are printed enlarged, and need finer pictures; whole pixels to the millimetre, whole pixels to the inch. */
    static int perMm(double size) {
        return size > 30 ? 15 : size > 21.5 ? 20 : size > 13 ? 25 : 35;
    }


    private Optional<Reading.Read> read(Kind kind) {
        return coin.measured().flatMap(m -> m.reading(kind)).map(exergue.model.Written::value)
                .filter(Reading.Read.class::isInstance).map(Reading.Read.class::cast);
    }

    /** Within the half hour to which axes are recorded, no coin is quite upright. */
    private double axis() {
        double hours = read(Kind.AXIS).map(read -> read.first().value().doubleValue()).orElse(12.0 * new Random(seed).nextInt(12) / 12);
        double off = Math.max(-6, Math.min(6, new Random(seed + 9).nextGaussian() * 3));
        return (hours * 30 + off + 360) % 360;
    }

    private Flan flan() {
        FlanMaker maker = new FlanMaker(seed);
        Random chance = new Random(seed + 1);
        Flan raw = fate.edge(raw(maker, chance), maker, chance);
        return fate.holed(fitted(raw, chance).centred(), maker);
    }

    private Flan raw(FlanMaker maker, Random chance) {
        Shape shape = type.shape().value();
        boolean cast = type.making().value() == Making.CAST;
        return switch (shape) {
            case SQUARE, RECTANGULAR -> maker.sided(4, 1, shape == Shape.SQUARE ? 1 : 1.25);
            case POLYGONAL -> type.id().value().equals("pho-t11") ? corner(maker.sided(6, 1, 1)) : maker.sided(8, 1, 1);
            case IRREGULAR -> maker.struck(1.7, 1);
            default -> cast ? maker.cast(type.id().value().startsWith("ark") ? 0.05 : 0.02)
                    : maker.struck(type.id().value().equals("orm-t01") ? 1.7 : 0.85, chance.nextInt(4));
        };
    }

    private static Flan corner(Flan flan) {
        return flan.moved(java.awt.geom.AffineTransform.getRotateInstance(Math.PI / 6));
    }

    private Flan fitted(Flan raw, Random chance) {
        Optional<Reading.Read> diameter = read(Kind.DIAMETER);
        if (diameter.isEmpty()) {
            double whole = type.id().value().equals("ark-t05") ? 38 : type.id().value().equals("orm-t02") ? 24.6 : 17.2;
            return FittedFlan.to(raw, Flan::greatest, whole * 0.97);
        }
        double first = diameter.get().first().value().doubleValue();
        double last = diameter.get().normal().get(diameter.get().normal().size() - 1).value().doubleValue();
        double lean = 360 * chance.nextDouble();
        return switch (diameter.get().form()) {
            case TWO_WAY -> FittedFlan.twoWay(raw, first, last);
            case RANGE -> FittedFlan.leastAndGreatest(raw, lean, Math.min(first, last), Math.max(first, last));
            case SINGLE -> alongConvention(raw, first, lean);
        };
    }

    private Flan alongConvention(Flan raw, double millimetres, double lean) {
        if (type.shape().value() == Shape.POLYGONAL) {
            return FittedFlan.to(raw, Flan::vertical, millimetres);
        }
        if (direction(coin.measured().orElseThrow()) != Convention.Direction.TOP_TO_BOTTOM) {
            return FittedFlan.to(raw, Flan::greatest, millimetres);
        }
        return FittedFlan.vertical(raw, lean % 80 - 40, millimetres, othersGreatest(millimetres));
    }

    /** What another hand found to be the greatest diameter; a little more than the height where nobody did. */
    private double othersGreatest(double vertical) {
        for (Measurement other : coin.alsoMeasured()) {
            Optional<Reading.Read> read = other.reading(Kind.DIAMETER).map(exergue.model.Written::value)
                    .filter(Reading.Read.class::isInstance).map(Reading.Read.class::cast);
            if (read.isPresent() && direction(other) == Convention.Direction.GREATEST && read.get().form() == Reading.Form.SINGLE) {
                double step = other.convention().sizing().resolution().map(java.math.BigDecimal::doubleValue).orElse(0.1);
                double told = read.get().first().value().doubleValue();
                return Math.max(told, Math.min(told + step * 0.45, vertical * 1.012));
            }
        }
        return vertical * 1.022;
    }

    private static Convention.Direction direction(Measurement measurement) {
        return measurement.convention().sizing().direction();
    }

    /** Linear light of one side, the size of its file. */
    Field[] light(boolean obverse, Backdrop backdrop) {
        Truth truth = drawn.truth();
        Flan middled = obverse ? truth.obverse() : truth.reverse();
        Dies dies = new Dies(face);
        String name = coin.dies().flatMap(pair -> obverse ? pair.obverse() : pair.reverse()).map(exergue.model.Written::value).orElse(id());
        String kind = type.id().value();
        Die die = obverse ? dies.obverse(kind, name, id()) : dies.reverse(kind, name, id());
        long sideSeed = seed * 2 + (obverse ? 0 : 1);
        Photo photo = drawn.side(middled, die, strike(obverse, new Random(sideSeed)), dieRadius(middled, kind),
                0.55 + 0.4 * new Random(seed + 5).nextDouble(), obverse ? fate.obverse() : fate.reverse(), sideSeed);
        return drawn.photograph(photo, backdrop, 0.40, 0);
    }

    private static double dieRadius(Flan flan, String kind) {
        double least = Math.min(flan.vertical(), flan.horizontal()) / 2;
        return switch (kind) {
            case "ark-t15", "orm-t04" -> least * 1.04;
            case "ark-t16", "orm-t06" -> least * 1.10;
            case "pho-t11" -> flan.vertical() / 2 * 0.90;
            case "ark-t01" -> least * 1.05;
            case "ark-t05", "ark-t06", "orm-t05" -> least * 1.0;
            default -> (flan.vertical() + flan.horizontal()) / 4 * 0.985;
        };
    }

    private Strike strike(boolean obverse, Random chance) {
        boolean cast = type.making().value() == Making.CAST;
        boolean noble = drawn.metal() == Metal.GOLD || drawn.metal() == Metal.SILVER;
        double spread = cast ? 0.008 : type.shape().value().wantsTwoDiameters() ? 0.03 : 0.035;
        double usual = drawn.metal() == Metal.GOLD ? 0.05 + 0.08 * chance.nextDouble() : noble ? 0.08 + 0.22 * chance.nextDouble()
                : 0.22 + 0.28 * chance.nextDouble();
        double pits = drawn.metal() == Metal.GOLD ? 0 : noble ? 0.12 * chance.nextDouble() : 0.22 + 0.30 * chance.nextDouble();
        double weak = chance.nextDouble() < 0.3 ? 0.35 + 0.4 * chance.nextDouble() : 0;
        double dish = cast || type.shape().value().wantsTwoDiameters() ? 0 : 0.014 * drawn.flan().vertical() * (obverse ? -1 : 1);
        return new Strike(spread * chance.nextGaussian(), spread * chance.nextGaussian(), fate.wear(usual), weak, 360 * chance.nextDouble(),
                fate.pits(pits), dish);
    }

    boolean uniface() {
        return type.uniface().value();
    }
}
