package exergue.photo.print;

import exergue.photo.Raster;
import java.util.Arrays;

/** One row of a photograph brought down to the columns of the picture that is made out of it. Used again for every row. */
final class GatheredRow {

    private static final float FULL = 65535f;
    /** Of red, green and blue in a grey: the luma of ITU-R BT.709. */
    private static final float[] LUMA = {0.2126f, 0.7152f, 0.0722f};

    private final Raster raster;
    private final int left;
    private final int right;
    private final boolean grey;
    private final int[] samples;
    /** For each pixel of the photograph the column that it begins in, and how much of it lies there; the rest is in the next. */
    private final int[] columns;
    private final float[] parts;
    private final float[] weights;
    private final float[] sums;

    /** @param grey whether colours are put together into one grey */
    GatheredRow(Raster raster, Cut.Frame frame, boolean grey) {
        this.raster = raster;
        this.grey = grey;
        this.left = Math.max(0, (int) Math.floor(frame.left()));
        this.right = Math.max(left, Math.min(raster.width(), (int) Math.ceil(frame.left() + frame.width() * frame.step())));
        this.samples = new int[(right - left) * raster.channels()];
        this.columns = new int[right - left];
        this.parts = new float[right - left];
        for (int i = 0; i < columns.length; i++) {
            double from = (left + i - frame.left()) / frame.step();
            columns[i] = (int) Math.floor(from);
            parts[i] = (float) Math.min(1, (columns[i] + 1 - from) * frame.step());
        }
        this.weights = new float[frame.width()];
        this.sums = new float[frame.width() * (grey ? 1 : raster.channels())];
    }

    /** How much a pixel counts, 0 to 1. */
    @FunctionalInterface
    interface Weight {
        float at(int x, int y);
    }

    /** False if no pixel of the row counts. */
    boolean gather(int y, Weight weight) {
        Arrays.fill(weights, 0);
        Arrays.fill(sums, 0);
        raster.row(y, left, right, samples);
        boolean any = false;
        for (int i = 0; i < columns.length; i++) {
            float counts = weight.at(left + i, y);
            if (counts > 0) {
                any = true;
                add(i, columns[i], counts * parts[i]);
                add(i, columns[i] + 1, counts * (1 - parts[i]));
            }
        }
        return any;
    }

    private void add(int pixel, int column, float weight) {
        if (weight <= 0 || column < 0 || column >= weights.length) {
            return;
        }
        weights[column] += weight;
        int channels = raster.channels();
        if (channels == 1) {
            sums[column] += weight * samples[pixel];
        } else if (grey) {
            sums[column] += weight * (LUMA[0] * samples[pixel * 3] + LUMA[1] * samples[pixel * 3 + 1] + LUMA[2] * samples[pixel * 3 + 2]);
        } else {
            sums[column * 3] += weight * samples[pixel * 3];
            sums[column * 3 + 1] += weight * samples[pixel * 3 + 1];
            sums[column * 3 + 2] += weight * samples[pixel * 3 + 2];
        }
    }

    /** Adds what was gathered, times so much, to one row of the picture. Samples are added as 0 to 1. */
    void addTo(int row, float times, float[] allWeights, float[] allSums) {
        for (int i = 0; i < weights.length; i++) {
            allWeights[row * weights.length + i] += times * weights[i];
        }
        for (int i = 0; i < sums.length; i++) {
            allSums[row * sums.length + i] += times * sums[i] / FULL;
        }
    }
}
