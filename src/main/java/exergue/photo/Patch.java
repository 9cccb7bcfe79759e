package exergue.photo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Pixels of a mask that hang together by their sides.
 *
 * @param width  of the whole picture
 * @param pixels numbered line by line
 */
record Patch(int width, int height, int[] pixels, int left, int top, int right, int bottom) {

    /** Of the greatest depth: no coin is thinner than that between two thick places. */
    private static final double WAIST = 0.65;
    private static final double AS_THICK = 0.8;

    /** Every patch of at least so many pixels, in the order in which a reader comes upon them. */
    static List<Patch> of(Mask mask, int least) {
        List<Patch> patches = new ArrayList<>();
        Mask seen = new Mask(mask.width(), mask.height());
        int[] own = new int[mask.width() * mask.height()];
        for (int start = mask.next(0); start >= 0; start = mask.next(start + 1)) {
            if (!seen.has(start)) {
                int size = grown(mask, seen, own, start);
                if (size >= least) {
                    patches.add(of(mask, own, size));
                }
            }
        }
        return patches;
    }

    /** Writes the pixels that hang together with the first into {@code own}; returns how many they are. */
    private static int grown(Mask mask, Mask seen, int[] own, int start) {
        int width = mask.width();
        int size = reach(mask, seen, own, 0, start % width, start / width);
        for (int next = 0; next < size; next++) {
            int x = own[next] % width;
            int y = own[next] / width;
            size = reach(mask, seen, own, size, x - 1, y);
            size = reach(mask, seen, own, size, x + 1, y);
            size = reach(mask, seen, own, size, x, y - 1);
            size = reach(mask, seen, own, size, x, y + 1);
        }
        return size;
    }

    private static int reach(Mask mask, Mask seen, int[] own, int size, int x, int y) {
        int at = y * mask.width() + x;
        if (!mask.has(x, y) || seen.has(at)) {
            return size;
        }
        seen.mark(at);
        own[size] = at;
        return size + 1;
    }

    private static Patch of(Mask mask, int[] own, int size) {
        int[] box = {Integer.MAX_VALUE, Integer.MAX_VALUE, -1, -1};
        for (int i = 0; i < size; i++) {
            int x = own[i] % mask.width();
            int y = own[i] / mask.width();
            box[0] = Math.min(box[0], x);
            box[1] = Math.min(box[1], y);
            box[2] = Math.max(box[2], x);
            box[3] = Math.max(box[3], y);
        }
        return new Patch(mask.width(), mask.height(), Arrays.copyOf(own, size), box[0], box[1], box[2], box[3]);
    }

    int size() {
        return pixels.length;
    }

    /** The same on a part of the picture that holds all of it. */
    Patch on(int x, int y, int partWidth, int partHeight) {
        int[] moved = new int[pixels.length];
        for (int i = 0; i < moved.length; i++) {
            moved[i] = (pixels[i] / width - y) * partWidth + pixels[i] % width - x;
        }
        return new Patch(partWidth, partHeight, moved, left - x, top - y, right - x, bottom - y);
    }

    /** Only this patch. */
    Mask mask() {
        Mask mask = new Mask(width, height);
        for (int at : pixels) {
            mask.mark(at);
        }
        return mask;
    }

    /**
     * True if it is thick in two places and thin between them, like two coins that touch: taken off all round to two thirds of its depth,
     * it falls apart into two that are both about as thick as the thickest place.
     */
    boolean isTwo() {
        Mask mask = on(left, top, across(), down()).mask();
        int[] depth = Depth.of(mask, true);
        int deepest = Arrays.stream(depth).max().orElse(0);
        Mask cores = new Mask(mask.width(), mask.height());
        for (int at = 0; at < depth.length; at++) {
            if (depth[at] > WAIST * deepest) {
                cores.mark(at);
            }
        }
        return of(cores, 1).stream().filter(core -> Arrays.stream(core.pixels).anyMatch(at -> depth[at] > AS_THICK * deepest)).count() > 1;
    }

    /** True where it reaches the edge of the picture. */
    boolean touchesFrame() {
        return left == 0 || top == 0 || right == width - 1 || bottom == height - 1;
    }

    int across() {
        return right - left + 1;
    }

    int down() {
        return bottom - top + 1;
    }
}
