package exergue.study.chart;

import java.util.List;
import java.util.Optional;

/** Counts by clock hour, as sectors of a dial whose area is as the count; several groups side by side. */
public record Rose(List<Dial> dials) implements Chart {

    public Rose {
        dials = List.copyOf(dials);
    }

    /**
     * One group.
     *
     * @param name   printed below the dial
     * @param note   printed below the name: "n = 43"
     * @param counts twelve, from twelve o'clock on; an axis midway between two hours counts half for each
     * @param mean   mean direction in hours, drawn as a stroke; empty for none
     * @param both   whether the stroke runs on in the opposite direction
     */
    public record Dial(String name, String note, List<Double> counts, Optional<Double> mean, boolean both) {
        public Dial {
            counts = List.copyOf(counts);
        }
    }
}
