package exergue.photo;

import exergue.photo.ScaleBarRead.NotRead;
import exergue.photo.ScaleBarRead.Read;
import exergue.photo.ScaleBarRead.Reason;
import java.util.List;
import java.util.Optional;

/**
 * Finds and reads a scale bar of black and white millimetres in turn, lying in any direction. First its like-sized blocks
 * in a row are found; then the light is followed along their middle, and every change from black to white is one division.
 */
public final class ScaleBar {

    private static final int FEWEST_DIVISIONS = 5;
    private static final double MOST_UNEVEN = 0.06;
    private static final double MOST_BENT = 0.06;
    /** Printing makes black divisions somewhat longer or shorter than white ones, the two together always the same. */
    private static final double MOST_GAIN = 0.3;

    private ScaleBar() { }

    /** What the bar says, or why none is read. */
    public static ScaleBarRead find(Raster raster) {
        int times = Scene.reduction(raster);
        Plane grey = grey(raster.reduced(times));
        Optional<Row> row = Row.longest(Block.all(grey));
        if (row.isEmpty()) {
            return new NotRead(Reason.NONE);
        }
        if (row.get().bent() > MOST_BENT) {
            return new NotRead(Reason.BENT);
        }
        List<Double> changes = Divisions.along(grey, row.get());
        if (changes.size() - 1 < FEWEST_DIVISIONS) {
            return new NotRead(Reason.TOO_SHORT);
        }
        Divisions.Fit fit = Divisions.fit(changes);
        if (fit.uneven() > MOST_UNEVEN || Math.abs(fit.gain()) > MOST_GAIN || changes.size() < 2 * row.get().blocks().size()) {
            return new NotRead(Reason.UNEVEN);
        }
        return new Read(fit.step() * times, changes.size() - 1, fit.uneven(), row.get().degrees(),
                scaled(row.get().at(changes.get(0)), times), scaled(row.get().at(changes.get(changes.size() - 1)), times));
    }

    private static Point scaled(Point point, int times) {
        return new Point(point.x() * times, point.y() * times);
    }

    private static Plane grey(Raster raster) {
        Plane grey = new Plane(raster.width(), raster.height());
        for (int y = 0; y < raster.height(); y++) {
            for (int x = 0; x < raster.width(); x++) {
                grey.set(x, y, raster.grey(x, y));
            }
        }
        return grey;
    }
}
