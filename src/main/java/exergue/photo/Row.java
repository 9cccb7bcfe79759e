package exergue.photo;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Blocks of one size at even distances in a line: every second division of a scale bar. */
record Row(List<Block> blocks) {

    private static final int FEWEST = 3;
    private static final int NEIGHBOURS = 3;
    private static final double ASIDE = 0.18;
    private static final double FILLED = 0.8;
    /** What a pixel adds to the distance of the middles of the outermost ones, aslant or not. */
    private static final double PIXEL = 0.8;

    Row {
        blocks = List.copyOf(blocks);
    }

    /** The row of most blocks, if there is one. */
    static Optional<Row> longest(List<Block> blocks) {
        Optional<Row> longest = Optional.empty();
        for (Block start : blocks) {
            List<Block> near = blocks.stream().filter(other -> other != start && other.alike(start))
                    .sorted(Comparator.comparingDouble(other -> other.middle().distance(start.middle()))).limit(NEIGHBOURS).toList();
            for (Block second : near) {
                Row row = new Row(grown(start, second, blocks));
                if (row.blocks.size() >= FEWEST && row.isOfDivisions()
                        && row.blocks.size() > longest.map(r -> r.blocks.size()).orElse(0)) {
                    longest = Optional.of(row);
                }
            }
        }
        return longest;
    }

    private static List<Block> grown(Block start, Block second, List<Block> blocks) {
        List<Block> row = new ArrayList<>(List.of(start, second));
        extend(row, blocks);
        Collections.reverse(row);
        extend(row, blocks);
        return row;
    }

    private static void extend(List<Block> row, List<Block> blocks) {
        while (true) {
            Block last = row.get(row.size() - 1);
            double parts = Math.min(row.size() - 1, 4);
            Block before = row.get((int) (row.size() - 1 - parts));
            double x = (last.middle().x() - before.middle().x()) / parts;
            double y = (last.middle().y() - before.middle().y()) / parts;
            Point expected = new Point(last.middle().x() + x, last.middle().y() + y);
            Optional<Block> next = blocks.stream().filter(block -> block.alike(last) && !row.contains(block))
                    .filter(block -> block.middle().distance(expected) < ASIDE * Math.hypot(x, y)).findFirst();
            if (next.isEmpty()) {
                return;
            }
            row.add(next.get());
        }
    }

    /** From the middle of one block to that of the next: two divisions. */
    double pitch() {
        return first().distance(last()) / (blocks.size() - 1);
    }

    private Point first() {
        return blocks.get(0).middle();
    }

    private Point last() {
        return blocks.get(blocks.size() - 1).middle();
    }

    double degrees() {
        return Caliper.between(first(), last()).degrees();
    }

    /** The place so many pixels along the row from the middle of its first block. */
    Point at(double along) {
        double length = first().distance(last());
        return new Point(first().x() + (last().x() - first().x()) * along / length,
                first().y() + (last().y() - first().y()) * along / length);
    }

    /** The place so far along and so far aside, to the right as the row runs. */
    Point at(double along, double aside) {
        Point on = at(along);
        double length = first().distance(last());
        return new Point(on.x() - (last().y() - first().y()) * aside / length, on.y() + (last().x() - first().x()) * aside / length);
    }

    /** How far the middles stray from a straight line, as a part of the pitch: the farthest of them. */
    double bent() {
        return blocks.stream().mapToDouble(block -> Math.abs(aside(block.middle()))).max().orElse(0) / pitch();
    }

    private double aside(Point point) {
        return ((last().x() - first().x()) * (point.y() - first().y()) - (last().y() - first().y()) * (point.x() - first().x()))
                / first().distance(last());
    }

    /** Width of the blocks square to the row, were they rectangles half as long as the pitch. */
    double across() {
        return blocks.stream().mapToInt(Block::size).average().orElse(0) / (pitch() / 2);
    }

    /** True if the blocks fill rectangles along the row that are about as long as the gaps between them. */
    private boolean isOfDivisions() {
        return blocks.stream().filter(this::isRectangle).count() >= 0.8 * blocks.size();
    }

    private boolean isRectangle(Block block) {
        double length = first().distance(last());
        double x = (last().x() - first().x()) / length;
        double y = (last().y() - first().y()) / length;
        double[] box = {0, 0, 0, 0};
        int width = block.patch().width();
        for (int at : block.patch().pixels()) {
            double right = at % width + 0.5 - block.middle().x();
            double down = at / width + 0.5 - block.middle().y();
            box[0] = Math.min(box[0], right * x + down * y);
            box[1] = Math.max(box[1], right * x + down * y);
            box[2] = Math.min(box[2], down * x - right * y);
            box[3] = Math.max(box[3], down * x - right * y);
        }
        double along = box[1] - box[0] + PIXEL;
        double aside = box[3] - box[2] + PIXEL;
        return block.size() > FILLED * along * aside && along > 0.3 * pitch() && along < 0.7 * pitch();
    }
}
