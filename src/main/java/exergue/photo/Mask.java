package exergue.photo;


/** Some pixels of a picture. Marked by whoever makes it, and then only read. */
final class Mask {

    private final int width;
    private final int height;
    private final boolean[] marked;

    Mask(int width, int height) {
        this.width = width;
        this.height = height;
        this.marked = new boolean[width * height];
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    boolean has(int index) {
        return marked[index];
    }

    /** False outside of the picture. */
    boolean has(int x, int y) {
        return x >= 0 && y >= 0 && x < width && y < height && marked[y * width + x];
    }

    void mark(int index) {
        marked[index] = true;
    }

    int count() {
        int count = 0;
        for (boolean one : marked) {
            count += one ? 1 : 0;
        }
        return count;
    }

    /** Every pixel that this one has not. */
    Mask others() {
        Mask others = new Mask(width, height);
        for (int at = 0; at < marked.length; at++) {
            others.marked[at] = !marked[at];
        }
        return others;
    }

    Mask and(Mask more) {
        Mask both = new Mask(width, height);
        for (int at = 0; at < marked.length; at++) {
            both.marked[at] = marked[at] || more.marked[at];
        }
        return both;
    }

    Mask without(Mask less) {
        Mask rest = new Mask(width, height);
        for (int at = 0; at < marked.length; at++) {
            rest.marked[at] = marked[at] && !less.marked[at];
        }
        return rest;
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
        int[] open = new int[width * height];
        int count = 0;
        for (int x = 0; x < width; x++) {
            count = reach(x, outside, open, count);
            count = reach((height - 1) * width + x, outside, open, count);
        }
        for (int y = 0; y < height; y++) {
            count = reach(y * width, outside, open, count);
            count = reach(y * width + width - 1, outside, open, count);
        }
        for (int next = 0; next < count; next++) {
            int at = open[next];
            int x = at % width;
            count = x > 0 ? reach(at - 1, outside, open, count) : count;
            count = x < width - 1 ? reach(at + 1, outside, open, count) : count;
            count = at >= width ? reach(at - width, outside, open, count) : count;
            count = at < marked.length - width ? reach(at + width, outside, open, count) : count;
        }
        return outside.others();
    }

    private int reach(int at, Mask outside, int[] open, int count) {
        if (marked[at] || outside.marked[at]) {
            return count;
        }
        outside.marked[at] = true;
        open[count] = at;
        return count + 1;
    }

    /** The first marked one from there on, line by line; below 0 where there is none. */
    int next(int from) {
        for (int at = from; at < marked.length; at++) {
            if (marked[at]) {
                return at;
            }
        }
        return -1;
    }
}
