package exergue.demo;

import java.awt.Font;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Random;

/** One of a series of coins drawn to find out how well photographs are measured. The same number gives the same coin. */
final class GradedCoin {

    /** How hard it is made to measure. */
    enum Grade {
        PLAIN("white or black ground, sharp, even light"),
        SHADOW("grey, coloured or paper ground, soft shadow, light that falls off"),
        WORN("worn, chipped, cracked or pierced; soft lens, grain, JPEG"),
        MISSHAPEN("square, eight-sided, cast, clipped or broken; off centre; shadow"),
        TOGETHER("both sides in one picture, the scale read from a bar of millimetres"),
        POOR("nearly round or of the ground’s own shade; deep shadow, much grain, poor JPEG");

        final String words;

        Grade(String words) {
            this.words = words;
        }
    }

    private static final List<String> OBVERSES = List.of("ark-t24", "pho-t09", "orm-t07", "pho-t02", "pho-t06");
    private static final List<String> REVERSES = List.of("ark-t18", "orm-t03", "pho-t11", "pho-t04", "ark-t21");

    final int number;
    final Grade grade;
    private final Random chance;
    private final Dies dies;
    private final FlanMaker maker;
    private final Metal metal;

    GradedCoin(int number, Font face) {
        this.number = number;
        this.grade = Grade.values()[number % Grade.values().length];
        this.chance = new Random(number * 7919L + 12345);
        this.dies = new Dies(face);
        this.maker = new FlanMaker(number * 104729L + 7);
        this.metal = Metal.values()[chance.nextInt(Metal.values().length)];
    }

    /** Both photographs with what is true of them; the same picture twice where it shows both sides. */
    record Pair(Truth truth, BufferedImage obverse, BufferedImage reverse) {
        boolean oneFile() {
            return obverse == reverse;
        }
    }

    Pair draw() {
        double size = 11 + 19 * chance.nextDouble();
        Flan flan = holed(FittedFlan.to(raw(), Flan::greatest, size).centred());
        double axis = 360 * chance.nextDouble();
        double pixelsPerMm = (150 + 90 * chance.nextDouble()) / size;
        Truth truth = new Truth(flan, flan.turnedOver(axis).centred(), axis, 1 / pixelsPerMm);
        Backdrop backdrop = backdrop();
        int kind = chance.nextInt(OBVERSES.size());
        Field[] obverse = light(truth.obverse(), dies.obverse(OBVERSES.get(kind), "o" + number, ""), pixelsPerMm, backdrop);
        Field[] reverse = light(truth.reverse(), dies.reverse(REVERSES.get(kind), "r" + number, ""), pixelsPerMm, backdrop);
        if (grade == Grade.TOGETHER) {
            BufferedImage both = developed(new BesideEachOther(backdrop, pixelsPerMm).of(obverse, reverse, 10 + chance.nextInt(11)));
            return new Pair(truth, both, both);
        }
        return new Pair(truth, developed(obverse), developed(reverse));
    }

    private Flan raw() {
        return switch (grade) {
            case PLAIN, SHADOW, TOGETHER -> maker.struck(0.9, chance.nextInt(3));
            case WORN -> maker.nicked(maker.struck(0.8, chance.nextInt(4)), 360 * chance.nextDouble(), 0.05 + 0.06 * chance.nextDouble());
            case MISSHAPEN -> misshapen();
            case POOR -> maker.struck(0.25 + 0.5 * chance.nextDouble(), 0);
        };
    }

    private Flan misshapen() {
        return switch (chance.nextInt(5)) {
            case 0 -> maker.sided(4, 1, 1 + 0.2 * chance.nextDouble());
            case 1 -> maker.sided(8, 1, 1);
            case 2 -> maker.cast(0.05);
            case 3 -> maker.clipped(maker.struck(0.8, 1), 360 * chance.nextDouble(), 0.62 + 0.2 * chance.nextDouble());
            default -> maker.broken(maker.struck(0.8, 1), 360 * chance.nextDouble(), 0.30 + 0.4 * chance.nextDouble());
        };
    }

    private Flan holed(Flan flan) {
        return grade == Grade.WORN && chance.nextInt(3) == 0
                ? maker.pierced(flan, 360 * chance.nextDouble(), flan.least() * 0.36, flan.least() * 0.05) : flan;
    }

    private Backdrop backdrop() {
        boolean light = metal == Metal.COPPER_ALLOY || metal == Metal.LEAD;
        double fall = 0.04 + 0.10 * chance.nextDouble();
        double shadow = 0.2 + 0.3 * chance.nextDouble();
        return switch (grade) {
            case PLAIN -> light || chance.nextBoolean() ? Backdrop.WHITE : Backdrop.BLACK;
            case SHADOW -> new Backdrop[] {tinted(0.80, 0.80, 0.78, fall, shadow), tinted(0.13, 0.24, 0.42, fall, shadow),
                    tinted(0.05, 0.16, 0.10, fall, shadow), tinted(0.62, 0.60, 0.55, fall, shadow)}[light ? chance.nextInt(2) * 3 : chance.nextInt(4)];
            case WORN, MISSHAPEN -> light || chance.nextBoolean() ? tinted(0.84, 0.84, 0.83, fall, shadow) : tinted(0.03, 0.03, 0.035, fall, 0);
            case TOGETHER -> light || chance.nextBoolean() ? tinted(0.90, 0.90, 0.89, 0, 0.2) : tinted(0.02, 0.02, 0.02, 0, 0);
            case POOR -> light ? tinted(0.40, 0.39, 0.38, 0.2, 0.55) : tinted(0.70, 0.69, 0.66, 0.2, 0.6);
        };
    }

    private static Backdrop tinted(double red, double green, double blue, double fall, double shadow) {
        return new Backdrop(red, green, blue, fall, shadow, 0.45, 0.5);
    }

    private Field[] light(Flan middled, Die die, double pixelsPerMm, Backdrop backdrop) {
        double margin = 14 / pixelsPerMm;
        int width = (int) Math.ceil((middled.horizontal() + 2 * margin) * pixelsPerMm);
        int height = (int) Math.ceil((middled.vertical() + 2 * margin) * pixelsPerMm);
        AffineTransform place = AffineTransform.getTranslateInstance(width / 2.0 + chance.nextDouble(), height / 2.0 - chance.nextDouble());
        place.scale(pixelsPerMm, pixelsPerMm);
        boolean aside = grade == Grade.MISSHAPEN;
        Strike strike = new Strike((aside ? 0.12 : 0.03) * chance.nextGaussian(), (aside ? 0.12 : 0.03) * chance.nextGaussian(),
                grade == Grade.WORN ? 0.7 : 0.25, chance.nextInt(3) == 0 ? 0.5 : 0, 360 * chance.nextDouble(), 0.4 * chance.nextDouble(), 0);
        Face face = new Face(middled, place, width, height, number * 2L + middled.edge().size());
        face.strike(die, strike, middled.least() / 2, metal.look(number).rough());
        Photo photo = Photo.of(face, metal.look(number), number, 0.8);
        return new Camera(1, soft(), 0, 0).expose(photo, backdrop, pixelsPerMm);
    }

    private BufferedImage developed(Field[] light) {
        return new Camera(1, 0, grain(), number * 31L + light[0].width).develop(light);
    }

    private double soft() {
        return switch (grade) {
            case PLAIN -> 0.35;
            case SHADOW, TOGETHER -> 0.6;
            case WORN, MISSHAPEN -> 0.9;
            case POOR -> 1.3;
        };
    }

    private double grain() {
        return grade == Grade.POOR ? 5 : grade == Grade.WORN ? 2.5 : 1;
    }

    /** Of the file the pictures are kept in; 0 for one that loses nothing. */
    float quality() {
        return grade == Grade.POOR ? 0.55f : grade == Grade.WORN || grade == Grade.MISSHAPEN ? 0.80f : 0;
    }
}
