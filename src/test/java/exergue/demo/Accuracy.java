package exergue.demo;

import exergue.demo.GradedCoin.Grade;
import exergue.photo.AxisFromOutlines;
import exergue.photo.Limits;
import exergue.photo.Outline;
import exergue.photo.Outlined;
import exergue.photo.Outliner;
import exergue.photo.PictureReader;
import exergue.photo.Raster;
import exergue.photo.ReadPicture;
import exergue.photo.ScaleBar;
import exergue.photo.ScaleBarRead;
import exergue.photo.TwoOutlines;
import java.awt.Font;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Drawn coins measured as photographs are, and held against what is true of them. */
final class Accuracy {

    static final int COINS = 500;

    /**
     * @param diameters errors in per cent, signed: vertical, horizontal, greatest and least of each side that was outlined
     * @param area      errors in per cent, signed
     * @param axis      error in degrees, 0 to 180; empty where the axis was refused
     * @param refused   sides without an outline
     */
    record Measured(int number, Grade grade, List<Double> diameters, List<Double> area, Optional<Double> axis, String refused) {
        Measured {
            diameters = List.copyOf(diameters);
            area = List.copyOf(area);
        }
    }

    private Accuracy() { }

    static List<Measured> of(int coins, Font face) {
        return IntStream.range(0, coins).parallel().mapToObj(number -> measured(new GradedCoin(number, face))).toList();
    }

    static Measured measured(GradedCoin coin) {
        GradedCoin.Pair pair = coin.draw();
        List<Double> diameters = new ArrayList<>();
        List<Double> area = new ArrayList<>();
        Raster first = raster(pair.obverse(), coin.quality());
        Outlined obverse = Outliner.find(first);
        Outlined reverse = pair.oneFile() ? obverse : Outliner.find(raster(pair.reverse(), coin.quality()));
        double scale = pair.oneFile() ? fromBar(first) : pair.truth().millimetresPerPixel();
        Optional<Outline> front = side(obverse, 0, pair).map(outline -> outline.times(scale));
        Optional<Outline> back = side(reverse, 1, pair).map(outline -> outline.times(scale));
        front.ifPresent(outline -> held(outline, pair.truth().obverse(), diameters, area));
        back.ifPresent(outline -> held(outline, pair.truth().reverse(), diameters, area));
        Optional<Double> axis = front.isEmpty() || back.isEmpty() ? Optional.empty()
                : angle(TwoOutlines.axis(front.get(), back.get())).map(degrees -> Math.abs(Math.IEEEremainder(degrees - pair.truth().axis(), 360)));
        return new Measured(coin.number, coin.grade, diameters, area, axis, why(obverse) + why(reverse) + (Double.isNaN(scale) ? "NO_SCALE" : ""));
    }

    private static String why(Outlined outlined) {
        return outlined instanceof Outlined.Refused refused ? refused.reason() + " " : "";
    }

    private static Optional<Double> angle(AxisFromOutlines axis) {
        return axis instanceof AxisFromOutlines.Angle angle ? Optional.of(angle.degrees()) : Optional.empty();
    }

    /** The outline of one side; where both are on one picture it must show two. */
    private static Optional<Outline> side(Outlined outlined, int number, GradedCoin.Pair pair) {
        return outlined instanceof Outlined.Found found && found.outlines().size() == (pair.oneFile() ? 2 : 1)
                ? Optional.of(found.outlines().get(pair.oneFile() ? number : 0)) : Optional.empty();
    }

    /** Millimetres to the pixel, or not a number. */
    private static double fromBar(Raster raster) {
        return ScaleBar.find(raster) instanceof ScaleBarRead.Read read ? 1 / read.pixelsPerMm() : Double.NaN;
    }

    private static void held(Outline inMm, Flan flan, List<Double> diameters, List<Double> area) {
        if (Double.isNaN(inMm.area())) {
            return;
        }
        diameters.add(error(inMm.vertical(), flan.vertical()));
        diameters.add(error(inMm.horizontal(), flan.horizontal()));
        diameters.add(error(inMm.greatest().length(), flan.greatest()));
        diameters.add(error(inMm.least().length(), flan.least()));
        area.add(error(inMm.area(), flan.area()));
    }

    private static double error(double measured, double truth) {
        return 100 * (measured - truth) / truth;
    }

    static Raster raster(BufferedImage picture, float quality) {
        if (quality == 0) {
            return Raster.of(picture);
        }
        try {
            byte[] bytes = PictureFile.jpeg(picture, 300, quality);
            return ((ReadPicture.Picture) PictureReader.read(bytes, Limits.USUAL)).raster();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The value below which this share of the absolute errors lies. */
    static double quantile(List<Measured> all, double share, Function<Measured, List<Double>> of) {
        double[] sorted = all.stream().flatMap(one -> of.apply(one).stream()).mapToDouble(Math::abs).sorted().toArray();
        return sorted.length == 0 ? Double.NaN : sorted[(int) Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
    }

    /** The page of the docs. */
    static String page(List<Measured> all) {
        StringBuilder page = new StringBuilder("""
                # How well photographs are measured

                %d coins are drawn by a program of the tests (`exergue.demo`) that knows their outlines and axes to the last
                digit, photographed by it in six ways from easy to hard, on pictures on which the coin is only 150 to 240
                pixels wide, and measured as `gauge` measures a photograph. The errors are those of four diameters of each
                side (vertical, horizontal, greatest, least), of its area, and of the axis where one is given; where the
                two outlines leave a doubt, none is. Larger pictures give smaller errors. The table is made by a test,
                which fails where it is no longer true (`AccuracyTest`).

                | photographs | coins | sides outlined | diameter, half within, %% | 95 %% within, %% | area, half within, %% | axes given | half within | 95 %% within | worst |
                | --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |
                """.formatted(all.size()));
        for (Grade grade : Grade.values()) {
            page.append(row(grade.words, all.stream().filter(one -> one.grade() == grade).toList())).append('\n');
        }
        page.append(row("**all**", all)).append('\n').append("""

                A drawn coin is not a real one: its metal, its shadow and its lens are simpler. The table speaks of
                the method; how far it holds for a photograph of yours shows when a few coins are also measured with callipers.
                """);
        return page.toString();
    }

    static String row(String name, List<Measured> all) {
        List<Double> axes = all.stream().flatMap(one -> one.axis().stream()).sorted().toList();
        long outlined = all.stream().mapToLong(one -> one.area().size()).sum();
        return String.format(Locale.ROOT, "| %s | %d | %d | %.2f | %.2f | %.2f | %d | %.1f° | %.1f° | %.1f° |", name, all.size(), outlined,
                quantile(all, 0.5, Measured::diameters), quantile(all, 0.95, Measured::diameters),
                quantile(all, 0.5, Measured::area), axes.size(), at(axes, 0.5), at(axes, 0.95), at(axes, 1));
    }

    private static double at(List<Double> sorted, double share) {
        return sorted.isEmpty() ? Double.NaN : sorted.get((int) Math.min(sorted.size() - 1, Math.floor(share * sorted.size())));
    }
}
