package exergue.photo;

/** How deep each pixel of a mask lies in it: steps to the nearest pixel outside, a slanting step counted as one. */
final class Depth {

    private Depth() { }

    static int[] of(Mask mask) {
        int width = mask.width();
        int height = mask.height();
        int[] depth = new int[width * height];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                if (mask.has(x, y)) {
                    depth[y * width + x] = 1 + Math.min(Math.min(get(depth, mask, x - 1, y), get(depth, mask, x, y - 1)),
                            Math.min(get(depth, mask, x - 1, y - 1), get(depth, mask, x + 1, y - 1)));
                }
            }
        }
        for (int y = height - 1; y >= 0; y--) {
            for (int x = width - 1; x >= 0; x--) {
                int after = 1 + Math.min(Math.min(get(depth, mask, x + 1, y), get(depth, mask, x, y + 1)),
                        Math.min(get(depth, mask, x - 1, y + 1), get(depth, mask, x + 1, y + 1)));
                depth[y * width + x] = Math.min(depth[y * width + x], after);
            }
        }
        return depth;
    }

    private static int get(int[] depth, Mask mask, int x, int y) {
        return x < 0 || y < 0 || x >= mask.width() || y >= mask.height() ? 0 : depth[y * mask.width() + x];
    }
}
