package exergue.photo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;

/** Where a scale bar changes from black to white and back, along its middle. */
final class Divisions {

    private static final double STEP = 0.25;
    private static final double LANES = 7;
    private static final double INNER = 0.3;
    private static final double BEYOND = 0.8;

    private Divisions() { }

    /**
     * @param step   length of a division
     * @param gain   by how much the divisions of one shade are longer than the others, as a part of a division
     * @param uneven what is left over, as a standard deviation in parts of a division
     */
    record Fit(double step, double gain, double uneven) { }

    /** Places of the changes, in pixels along the row from the middle of its first block. */
    static List<Double> along(Plane grey, Row row) {
        double end = row.pitch() * (row.blocks().size() - 1);
        double from = -BEYOND * row.pitch();
        int count = (int) Math.ceil((end + BEYOND * row.pitch() - from) / STEP);
        double[] light = new double[count];
        for (int i = 0; i < count; i++) {
            light[i] = across(grey, row, from + i * STEP);
        }
        double level = level(light);
        List<Double> changes = new ArrayList<>();
        for (int i = 1; i < count; i++) {
            if (light[i - 1] < level != light[i] < level) {
                changes.add(from + (i - 1 + (level - light[i - 1]) / (light[i] - light[i - 1])) * STEP);
            }
        }
        return whole(changes, row.pitch() / 2);
    }

    /** Half of the light between black and white: the division’s own edge, however soft the picture. */
    private static double level(double[] light) {
        double[] sorted = light.clone();
        Arrays.sort(sorted);
        return (sorted[sorted.length / 10] + sorted[sorted.length * 9 / 10]) / 2;
    }

    private static double across(Plane grey, Row row, double along) {
        double sum = 0;
        for (int lane = 0; lane < LANES; lane++) {
            Point at = row.at(along, (lane / (LANES - 1) - 0.5) * 2 * INNER * row.across());
            sum += Light.of(grey.between(at.x(), at.y()));
        }
        return sum / LANES;
    }

    /** Without changes at the ends that lie too near or too far to bound a division: the ground, an outline. */
    private static List<Double> whole(List<Double> changes, double division) {
        List<Double> whole = new ArrayList<>(changes);
        while (whole.size() > 1 && !isDivision(whole.get(1) - whole.get(0), division)) {
            whole.remove(0);
        }
        while (whole.size() > 1 && !isDivision(whole.get(whole.size() - 1) - whole.get(whole.size() - 2), division)) {
            whole.remove(whole.size() - 1);
        }
        return whole;
    }

    private static boolean isDivision(double length, double division) {
        return length > 0.6 * division && length < 1.4 * division;
    }

    /** Least squares of place = start + step × number ± half the gain. */
    static Fit fit(List<Double> changes) {
        int n = changes.size();
        RealMatrix terms = MatrixUtils.createRealMatrix(n, 3);
        double[] places = new double[n];
        for (int i = 0; i < n; i++) {
            terms.setRow(i, new double[] {1, i, i % 2 == 0 ? -0.5 : 0.5});
            places[i] = changes.get(i);
        }
        double[] fit = new QRDecomposition(terms).getSolver()
                .solve(new ArrayRealVector(places)).toArray();
        double left = 0;
        for (int i = 0; i < n; i++) {
            double off = places[i] - fit[0] - fit[1] * i - fit[2] * (i % 2 == 0 ? -0.5 : 0.5);
            left += off * off;
        }
        return new Fit(fit[1], fit[2] / fit[1], Math.sqrt(left / n) / fit[1]);
    }
}
