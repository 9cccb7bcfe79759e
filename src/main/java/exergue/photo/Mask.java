package exergue.photo;

import java.util.ArrayDeque;
import java.util.BitSet;

/** Some pixels of a picture. Marked by whoever makes it, and then only read. */
final class Mask {

    private final int width;
    private final int height;
    private final BitSet marked;

    Mask(int width, int height) {
        this(width, height, new BitSet(width * height));
    }

    private Mask(int width, int height, BitSet marked) {
        this.width = width;
        this.height = height;
        this.marked = marked;
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    boolean has(int index) {
        return marked.get(index);
    }

    /** False outside of the picture. */
    boolean has(int x, int y) {
        return x >= 0 && y >= 0 && x < width && y < height && marked.get(y * width + x);
    }

    void mark(int index) {
        marked.set(index);
    }

    int count() {
        return marked.cardinality();
    }

    /** Every pixel that this one has not. */
    Mask others() {
        BitSet others = (BitSet) marked.clone();
        others.flip(0, width * height);
        return new Mask(width, height, others);
    }

    Mask and(Mask more) {
        BitSet both = (BitSet) marked.clone();
        both.or(more.marked);
        return new Mask(width, height, both);
    }

    Mask without(Mask less) {
        BitSet rest = (BitSet) marked.clone();
        rest.andNot(less.marked);
        return new Mask(width, height, rest);
    }

    /** With every pixel that is within so many steps of it. */
    Mask grown(int by) {
        int[] depth = Depth.of(others(), false);
        Mask grown = new Mask(width, height);
        for (int at = 0; at < depth.length; at++) {
            if (depth[at] <= by) {
                grown.mark(at);
            }
        }
        return grown;
    }

    /** Without every pixel that is within so many steps of what is not marked, or of the frame. */
    Mask shrunk(int by) {
        int[] depth = Depth.of(this, true);
        Mask rest = new Mask(width, height);
        for (int at = next(0); at >= 0; at = next(at + 1)) {
            if (depth[at] > by) {
                rest.mark(at);
            }
        }
        return rest;
    }

    /** With all that is shut in by it, so that it cannot be reached from the frame by the sides of pixels. */
    Mask filled() {
        Mask outside = new Mask(width, height);
        ArrayDeque<Integer> open = new ArrayDeque<>();
        for (int x = 0; x < width; x++) {
            reach(x, 0, outside, open);
            reach(x, height - 1, outside, open);
        }
        for (int y = 0; y < height; y++) {
            reach(0, y, outside, open);
            reach(width - 1, y, outside, open);
        }
        while (!open.isEmpty()) {
            int at = open.remove();
            reach(at % width - 1, at / width, outside, open);
            reach(at % width + 1, at / width, outside, open);
            reach(at % width, at / width - 1, outside, open);
            reach(at % width, at / width + 1, outside, open);
        }
        return outside.others();
    }

    private void reach(int x, int y, Mask outside, ArrayDeque<Integer> open) {
        if (x >= 0 && y >= 0 && x < width && y < height && !has(x, y) && !outside.has(x, y)) {
            outside.mark(y * width + x);
            open.add(y * width + x);
        }
    }

    int next(int from) {
        return marked.nextSetBit(from);
    }
}
