package exergue.photo;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;

/**
 * Pixels of a mask that hang together by their sides.
 *
 * @param mask only they
 */
record Patch(Mask mask, int size, int left, int top, int right, int bottom) {

    /** Every patch of at least so many pixels, in the order in which a reader comes upon them. */
    static List<Patch> of(Mask mask, int least) {
        List<Patch> patches = new ArrayList<>();
        Mask seen = new Mask(mask.width(), mask.height());
        for (int start = mask.next(0); start >= 0; start = mask.next(start + 1)) {
            if (!seen.has(start)) {
                Patch patch = grown(mask, seen, start);
                if (patch.size() >= least) {
                    patches.add(patch);
                }
            }
        }
        return patches;
    }

    private static Patch grown(Mask mask, Mask seen, int start) {
        int width = mask.width();
        Mask own = new Mask(width, mask.height());
        ArrayDeque<Integer> open = new ArrayDeque<>();
        open.add(start);
        seen.mark(start);
        int size = 0;
        int[] box = {Integer.MAX_VALUE, Integer.MAX_VALUE, -1, -1};
        while (!open.isEmpty()) {
            int at = open.remove();
            own.mark(at);
            size++;
            int x = at % width;
            int y = at / width;
            box = new int[] {Math.min(box[0], x), Math.min(box[1], y), Math.max(box[2], x), Math.max(box[3], y)};
            reach(mask, seen, open, x - 1, y);
            reach(mask, seen, open, x + 1, y);
            reach(mask, seen, open, x, y - 1);
            reach(mask, seen, open, x, y + 1);
        }
        return new Patch(own, size, box[0], box[1], box[2], box[3]);
    }

    private static void reach(Mask mask, Mask seen, ArrayDeque<Integer> open, int x, int y) {
        int at = y * mask.width() + x;
        if (mask.has(x, y) && !seen.has(at)) {
            seen.mark(at);
            open.add(at);
        }
    }

    /** True where it reaches the edge of the picture. */
    boolean touchesFrame() {
        return left == 0 || top == 0 || right == mask.width() - 1 || bottom == mask.height() - 1;
    }

    int across() {
        return right - left + 1;
    }

    int down() {
        return bottom - top + 1;
    }
}
