package exergue.study.chart;

import java.util.List;

/**
 * Two rows of names with lines between them: dies and the coins they struck together.
 *
 * @param bands one below the other, each as wide as the chart
 */
public record Links(List<Band> bands) implements Chart {

    public Links {
        bands = List.copyOf(bands);
    }

    /** How many names stand side by side at most. */
    public double slots() {
        return bands.stream().flatMap(band -> band.groups().stream()).mapToDouble(group -> group.from() + group.slots()).max().orElse(1);
    }

    /** Groups that stand side by side and have no line in common. */
    public record Band(List<Group> groups) {
        public Band {
            groups = List.copyOf(groups);
        }
    }

    /**
     * Names that hang together.
     *
     * @param name  printed over them
     * @param from  how many slots lie to the left of them
     * @param slots that they take
     */
    public record Group(String name, double from, int slots, List<Node> upper, List<Node> lower, List<Line> lines) {
        public Group {
            upper = List.copyOf(upper);
            lower = List.copyOf(lower);
            lines = List.copyOf(lines);
        }
    }

    /** @param at middle of its slot, from the left of its group; @param again true where it has stood before */
    public record Node(String name, double at, boolean again) { }

    /** @param upper index in the upper row; @param lower in the lower; @param coins of the pair, 1 at least */
    public record Line(int upper, int lower, int coins) { }
}
