package exergue.photo;

import java.util.Arrays;

/** How deep each pixel of a mask lies in it: steps to the nearest pixel outside, a slanting step counted as one. */
final class Depth {

    private static final int FAR = 1 << 20;

    private final Mask mask;
    private final int width;
    /** With one more row and column on every side. */
    private final int[] depth;

    private Depth(Mask mask, int beyond) {
        this.mask = mask;
        this.width = mask.width() + 2;
        this.depth = new int[width * (mask.height() + 2)];
        Arrays.fill(depth, 0, width, beyond);
        Arrays.fill(depth, depth.length - width, depth.length, beyond);
        for (int row = 0; row < depth.length; row += width) {
            depth[row] = beyond;
            depth[row + width - 1] = beyond;
        }
    }

    /** @param frameIsOutside whether what lies at the frame of the picture lies at the edge of the mask */
    static int[] of(Mask mask, boolean frameIsOutside) {
        Depth depth = new Depth(mask, frameIsOutside ? 0 : FAR);
        depth.downward();
        depth.upward();
        int[] inner = new int[mask.width() * mask.height()];
        for (int y = 0; y < mask.height(); y++) {
            System.arraycopy(depth.depth, (y + 1) * depth.width + 1, inner, y * mask.width(), mask.width());
        }
        return inner;
    }

    private void downward() {
        for (int y = 0; y < mask.height(); y++) {
            for (int x = 0; x < mask.width(); x++) {
                if (mask.has(y * mask.width() + x)) {
                    int at = (y + 1) * width + x + 1;
                    depth[at] = 1 + least(depth[at - 1], depth[at - width - 1], depth[at - width], depth[at - width + 1]);
                }
            }
        }
    }

    private void upward() {
        for (int y = mask.height() - 1; y >= 0; y--) {
            for (int x = mask.width() - 1; x >= 0; x--) {
                int at = (y + 1) * width + x + 1;
                depth[at] = Math.min(depth[at], 1 + least(depth[at + 1], depth[at + width - 1], depth[at + width], depth[at + width + 1]));
            }
        }
    }

    private static int least(int one, int two, int three, int four) {
        return Math.min(Math.min(one, two), Math.min(three, four));
    }
}
