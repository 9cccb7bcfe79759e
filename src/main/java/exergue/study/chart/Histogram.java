package exergue.study.chart;

import java.util.List;
import java.util.Optional;

/**
 * How often figures fall within steps of equal width; several groups one below the other, over the same axis.
 *
 * @param axis   what is counted, with its unit: "Weight (g)"
 * @param from   where the first step begins
 * @param step   width of one
 * @param decimalMark of the figures at the axis
 * @param panels one for each group, each with as many counts as there are steps
 * @param mark   a figure to be marked in all of them
 */
public record Histogram(String axis, double from, double step, String decimalMark, List<Panel> panels, Optional<Mark> mark) implements Chart {

    public Histogram {
        panels = List.copyOf(panels);
    }

    /** Where the last step ends. */
    public double to() {
        return from + step * panels.get(0).counts().size();
    }

    /**
     * One group.
     *
     * @param name    printed in the panel
     * @param counts  of each step
     * @param density points of a smooth curve, as high as a count would be; empty for none
     * @param rug     every figure, for a stroke below the axis
     */
    public record Panel(String name, List<Integer> counts, List<Point> density, List<Double> rug) {
        public Panel {
            counts = List.copyOf(counts);
            density = List.copyOf(density);
            rug = List.copyOf(rug);
        }
    }

    /** A line through all panels, with its name at the top. */
    public record Mark(double at, String name) { }
}
