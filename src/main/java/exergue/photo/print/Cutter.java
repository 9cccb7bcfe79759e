package exergue.photo.print;

import exergue.photo.Outline;
import exergue.photo.Raster;
import java.awt.image.BufferedImage;
import java.awt.image.WritableRaster;
import java.util.Optional;

/**
 * Makes the picture that is printed out of a photograph. Each of its pixels is the mean of those of the photograph that it
 * covers. Where the coin is cut out, its colour comes only from pixels that lie well inside the outline, so that nothing of
 * the old ground is left along the edge; and the edge runs softly into white, half of it on the outline.
 */
final class Cutter {

    /** Pixels of the photograph along the edge that have something of the ground in them. */
    private static final double MIXED = 2;
    private static final int FULL = 255;
    private static final int[][] NEIGHBOURS = {{-1, -1}, {0, -1}, {1, -1}, {-1, 0}, {1, 0}, {-1, 1}, {0, 1}, {1, 1}};

    private final Raster raster;
    private final Cut.Frame frame;
    private final int channels;
    private final float[] sums;
    private final float[] weights;

    private Cutter(Raster raster, Cut cut) {
        this.raster = raster;
        this.frame = cut.frame();
        this.channels = cut.grey() || raster.channels() == 1 ? 1 : 3;
        this.sums = new float[frame.width() * frame.height() * channels];
        this.weights = new float[frame.width() * frame.height()];
    }

    /** @param outline of the coin, in pixels of the photograph; empty if the ground is kept */
    static BufferedImage cut(Raster raster, Optional<Outline> outline, Cut cut) {
        Cutter cutter = new Cutter(raster, cut);
        if (outline.isEmpty()) {
            cutter.gather((x, y) -> 1);
            return cutter.image((x, y) -> 1);
        }
        int left = (int) Math.floor(outline.get().edge().left());
        int top = (int) Math.floor(outline.get().edge().top());
        int right = (int) Math.ceil(outline.get().edge().right());
        int bottom = (int) Math.ceil(outline.get().edge().bottom());
        Coverage inside = Coverage.of(outline.get().moved(-left, -top), right - left, bottom - top, MIXED);
        cutter.gather((x, y) -> x < left || y < top || x >= right || y >= bottom ? 0 : inside.at(x - left, y - top));
        Coverage printed = Coverage.of(outline.get().moved(-cut.frame().left(), -cut.frame().top()).times(1 / cut.frame().step()),
                cut.frame().width(), cut.frame().height()).soft();
        cutter.spread(printed);
        return cutter.image(printed::at);
    }

    /**
     * Goes once through the rows of the photograph that the frame covers. Each row is first gathered into the columns of the
     * picture, then what came of it shared out between the rows of the picture that it lies in.
     */
    private void gather(GatheredRow.Weight weight) {
        int first = Math.max(0, (int) Math.floor(frame.top()));
        int last = Math.min(raster.height(), (int) Math.ceil(frame.top() + frame.height() * frame.step()));
        GatheredRow row = new GatheredRow(raster, frame, channels == 1);
        for (int y = first; y < last; y++) {
            if (row.gather(y, weight)) {
                share(row, y);
            }
        }
    }

    private void share(GatheredRow row, int y) {
        double top = (y - frame.top()) / frame.step();
        double bottom = (y + 1 - frame.top()) / frame.step();
        for (int to = Math.max(0, (int) Math.floor(top)); to < Math.min(frame.height(), (int) Math.ceil(bottom)); to++) {
            float part = (float) ((Math.min(to + 1, bottom) - Math.max(to, top)) * frame.step());
            row.addTo(to, part, weights, sums);
        }
    }

    /** Gives pixels that are covered and have no colour the mean colour of their neighbours that have one, ring by ring. */
    private void spread(Coverage printed) {
        boolean more = true;
        while (more) {
            float[] before = weights.clone();
            more = false;
            for (int y = 0; y < frame.height(); y++) {
                for (int x = 0; x < frame.width(); x++) {
                    if (before[y * frame.width() + x] == 0 && printed.at(x, y) > 0) {
                        more |= borrow(x, y, before);
                    }
                }
            }
        }
    }

    private boolean borrow(int x, int y, float[] before) {
        int index = y * frame.width() + x;
        for (int[] step : NEIGHBOURS) {
            int nx = x + step[0];
            int ny = y + step[1];
            int from = ny * frame.width() + nx;
            if (nx >= 0 && ny >= 0 && nx < frame.width() && ny < frame.height() && before[from] > 0) {
                weights[index]++;
                for (int c = 0; c < channels; c++) {
                    sums[index * channels + c] += sums[from * channels + c] / before[from];
                }
            }
        }
        return weights[index] > 0;
    }

    private BufferedImage image(GatheredRow.Weight printed) {
        BufferedImage image = new BufferedImage(frame.width(), frame.height(),
                channels == 1 ? BufferedImage.TYPE_BYTE_GRAY : BufferedImage.TYPE_INT_RGB);
        WritableRaster out = image.getRaster();
        for (int y = 0; y < frame.height(); y++) {
            for (int x = 0; x < frame.width(); x++) {
                int index = y * frame.width() + x;
                float coin = weights[index] == 0 ? 0 : printed.at(x, y);
                for (int c = 0; c < channels; c++) {
                    float colour = weights[index] == 0 ? 1 : sums[index * channels + c] / weights[index];
                    out.setSample(x, y, c, Math.round((coin * colour + 1 - coin) * FULL));
                }
            }
        }
        return image;
    }
}
