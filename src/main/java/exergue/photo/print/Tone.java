package exergue.photo.print;

import exergue.photo.Outline;
import exergue.photo.Raster;

/**
 * How light a coin is on its picture, over all of its pixels.
 *
 * @param mean    of its greys, 0 black to 255 white
 * @param spread  their standard deviation
 * @param clipped how many of a thousand are as white as a pixel can be, so that nothing is left to be seen there
 */
public record Tone(int mean, int spread, int clipped) {

    private static final int FULL = 255;
    private static final int THOUSAND = 1000;
    private static final float WHITE = 254.5f / FULL;
    /** No more pixels than these are looked at across a coin; a mean needs no more. */
    private static final int ENOUGH = 600;

    static Tone of(Raster raster, Outline outline) {
        int left = Math.max(0, (int) Math.floor(outline.edge().left()));
        int top = Math.max(0, (int) Math.floor(outline.edge().top()));
        int step = Math.max(1, (int) Math.max(outline.horizontal(), outline.vertical()) / ENOUGH);
        int across = Math.min(raster.width() - left, (int) Math.ceil(outline.horizontal()) + 1) / step;
        int down = Math.min(raster.height() - top, (int) Math.ceil(outline.vertical()) + 1) / step;
        byte[] covered = Coverage.of(outline.moved(-left, -top).times(1.0 / step), Math.max(1, across), Math.max(1, down)).samples();
        long count = 0;
        double sum = 0;
        double squares = 0;
        long white = 0;
        for (int y = 0; y < down; y++) {
            for (int x = 0; x < across; x++) {
                if (covered[y * across + x] == (byte) FULL) {
                    double grey = raster.grey(left + x * step, top + y * step) * FULL;
                    count++;
                    sum += grey;
                    squares += grey * grey;
                    white += isWhite(raster, left + x * step, top + y * step) ? 1 : 0;
                }
            }
        }
        if (count == 0) {
            return new Tone(0, 0, 0);
        }
        double mean = sum / count;
        return new Tone((int) Math.round(mean), (int) Math.round(Math.sqrt(Math.max(0, squares / count - mean * mean))),
                (int) (white * THOUSAND / count));
    }

    private static boolean isWhite(Raster raster, int x, int y) {
        for (int c = 0; c < raster.channels(); c++) {
            if (raster.at(x, y, c) < WHITE) {
                return false;
            }
        }
        return true;
    }
}
