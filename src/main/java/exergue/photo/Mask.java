package exergue.photo;

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

    int next(int from) {
        return marked.nextSetBit(from);
    }
}
