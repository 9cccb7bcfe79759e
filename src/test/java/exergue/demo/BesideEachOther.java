package exergue.demo;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Obverse and reverse on one picture, a scale bar of black and white millimetres in turn below them. */
final class BesideEachOther {

    private static final double BLACK = 0.004;
    private static final double WHITE = 0.95;

    private final Backdrop backdrop;
    private final double pixelsPerMm;

    /** @param backdrop one that does not fall off, so that no seam shows */
    BesideEachOther(Backdrop backdrop, double pixelsPerMm) {
        this.backdrop = backdrop;
        this.pixelsPerMm = pixelsPerMm;
    }

    /** @param millimetres on the bar; 0 for none */
    Field[] of(Field[] left, Field[] right, int millimetres) {
        int below = millimetres == 0 ? 0 : (int) Math.ceil(4 * pixelsPerMm);
        int width = Math.max(left[0].width + right[0].width, (int) Math.ceil((millimetres + 4) * pixelsPerMm));
        int height = Math.max(left[0].height, right[0].height) + below;
        Field[] both = new Field[3];
        for (int channel = 0; channel < 3; channel++) {
            Field all = new Field(width, height);
            java.util.Arrays.fill(all.at, (float) backdrop.channel(channel));
            lay(left[channel], all, 0, (height - below - left[channel].height) / 2);
            lay(right[channel], all, left[channel].width, (height - below - right[channel].height) / 2);
            both[channel] = all;
        }
        if (millimetres > 0) {
            bar(both, millimetres, 2.3 * pixelsPerMm, height - 2.6 * pixelsPerMm);
        }
        return both;
    }

    private static void lay(Field part, Field all, int across, int down) {
        for (int y = 0; y < part.height; y++) {
            System.arraycopy(part.at, y * part.width, all.at, (down + y) * all.width + across, part.width);
        }
    }

    private void bar(Field[] light, int millimetres, double across, double down) {
        double high = 1.4 * pixelsPerMm;
        Path2D black = new Path2D.Double();
        for (int i = 0; i < millimetres; i += 2) {
            black.append(new Rectangle2D.Double(across + i * pixelsPerMm, down, pixelsPerMm, high), false);
        }
        Field whole = Field.covered(new Rectangle2D.Double(across, down, millimetres * pixelsPerMm, high), light[0].width, light[0].height);
        Field dark = Field.covered(black, light[0].width, light[0].height);
        for (Field channel : light) {
            for (int i = 0; i < channel.at.length; i++) {
                double bar = WHITE + (BLACK - WHITE) * dark.at[i];
                channel.at[i] = (float) (channel.at[i] * (1 - whole.at[i]) + bar * whole.at[i]);
            }
        }
    }
}
