package exergue.photo;

/** How deep each pixel of a mask lies in it: steps to the nearest pixel outside, a slanting step counted as one. */
final class Depth {

    private static final int FAR = 1 << 20;

    private final Mask mask;
    private final int beyond;
    private final int[] depth;

    private Depth(Mask mask, int beyond) {
        this.mask = mask;
        this.beyond = beyond;
        this.depth = new int[mask.width() * mask.height()];
    }

    /** @param frameIsOutside whether what lies at the frame of the picture lies at the edge of the mask */
    static int[] of(Mask mask, boolean frameIsOutside) {
        Depth depth = new Depth(mask, frameIsOutside ? 0 : FAR);
        depth.downward();
        depth.upward();
        return depth.depth;
    }

    private void downward() {
        for (int y = 0; y < mask.height(); y++) {
            for (int x = 0; x < mask.width(); x++) {
                if (mask.has(x, y)) {
                    depth[y * mask.width() + x] = 1 + Math.min(Math.min(at(x - 1, y), at(x, y - 1)), Math.min(at(x - 1, y - 1), at(x + 1, y - 1)));
                }
            }
        }
    }

    private void upward() {
        for (int y = mask.height() - 1; y >= 0; y--) {
            for (int x = mask.width() - 1; x >= 0; x--) {
                int after = 1 + Math.min(Math.min(at(x + 1, y), at(x, y + 1)), Math.min(at(x - 1, y + 1), at(x + 1, y + 1)));
                depth[y * mask.width() + x] = Math.min(depth[y * mask.width() + x], after);
            }
        }
    }

    private int at(int x, int y) {
        return x < 0 || y < 0 || x >= mask.width() || y >= mask.height() ? beyond : depth[y * mask.width() + x];
    }
}
