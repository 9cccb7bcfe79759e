package exergue.photo;

import java.util.Arrays;

/**
 * Shares a picture out between coin and ground where colour alone cannot tell, as under a shadow: from what is certain of
 * each the two spread like rising water over the steepness of the picture, and where they meet is the sharpest edge between
 * them. (A watershed from markers: Meyer, Color image segmentation, 1992.)
 */
final class Flood {

    private static final int LEVELS = 1024;
    private static final int NONE = -1;
    private static final float STEEPEST = 0.5f;

    private final Plane steepness;
    private final Mask coin;
    private final Mask seen;
    /** For each level a queue of pixels: its first and its last, and after each pixel the one that came next. */
    private final int[] first = new int[LEVELS];
    private final int[] last = new int[LEVELS];
    private final int[] after;
    private int level;

    private Flood(Plane steepness) {
        this.steepness = steepness;
        this.coin = new Mask(steepness.width(), steepness.height());
        this.seen = new Mask(steepness.width(), steepness.height());
        this.after = new int[steepness.width() * steepness.height()];
        Arrays.fill(first, NONE);
    }

    /** All that falls to the coin. */
    static Mask of(Plane steepness, Mask certainCoin, Mask certainGround) {
        Flood flood = new Flood(steepness);
        flood.begin(certainCoin, true);
        flood.begin(certainGround, false);
        flood.rise();
        return flood.coin;
    }

    private void begin(Mask certain, boolean ofCoin) {
        for (int at = certain.next(0); at >= 0; at = certain.next(at + 1)) {
            seen.mark(at);
            if (ofCoin) {
                coin.mark(at);
            }
            wait(0, at);
        }
    }

    private void rise() {
        for (level = 0; level < LEVELS; level++) {
            while (first[level] != NONE) {
                int at = first[level];
                first[level] = after[at];
                spread(at);
            }
        }
    }

    private void spread(int at) {
        int x = at % steepness.width();
        int y = at / steepness.width();
        reach(x - 1, y, coin.has(at));
        reach(x + 1, y, coin.has(at));
        reach(x, y - 1, coin.has(at));
        reach(x, y + 1, coin.has(at));
    }

    private void reach(int x, int y, boolean ofCoin) {
        int at = y * steepness.width() + x;
        if (x < 0 || y < 0 || x >= steepness.width() || y >= steepness.height() || seen.has(at)) {
            return;
        }
        seen.mark(at);
        if (ofCoin) {
            coin.mark(at);
        }
        int height = Math.min(LEVELS - 1, (int) (steepness.at(x, y) / STEEPEST * LEVELS));
        wait(Math.max(level, height), at);
    }

    private void wait(int at, int pixel) {
        after[pixel] = NONE;
        if (first[at] == NONE) {
            first[at] = pixel;
        } else {
            after[last[at]] = pixel;
        }
        last[at] = pixel;
    }
}
