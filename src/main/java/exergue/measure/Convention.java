package exergue.measure;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * Who measured, when, with what and how. Every reading belongs to one.
 *
 * @param id           as entries name it
 * @param title        as the methods statement names it: "measurements at the bench, 2024"
 * @param by           who measured; empty when a book does not say
 * @param when         as free text: "2023-2024"
 * @param work         id of the published work the figures come from
 * @param weighing     how and on what coins were weighed
 * @param sizing       how diameters were taken
 * @param turning      how axes were taken
 * @param decimalComma true where "3,87" means three and 87 hundredths in this source
 * @param cleaning     state of the coins when measured: "cleaned", "as found"
 * @param shortTitle   what tables and other hands' figures call it, where there is no room for the title: "Store"
 */
public record Convention(String id, String title, Optional<String> by, Optional<String> when,
                         Optional<String> work, Weighing weighing, Sizing sizing, Turning turning,
                         boolean decimalComma, Optional<String> cleaning, Optional<String> shortTitle) {

    /** @param unit unit of a bare figure; @param gr what "gr" means in this source; @param resolution smallest step, in grams */
    public record Weighing(Optional<String> instrument, Optional<Unit> unit, GrMeans gr,
                           Optional<BigDecimal> resolution) { }

    /** @param unit unit of a bare figure; @param printing which printed size scale "size 5" refers to; @param resolution in millimetres */
    public record Sizing(Optional<String> instrument, Optional<Unit> unit, Direction direction,
                         Optional<String> printing, Optional<BigDecimal> resolution) { }

    /** @param resolution in clock hours */
    public record Turning(AxisNotation notation, boolean anticlockwise, Optional<BigDecimal> resolution) { }

    /** One that goes by its title everywhere. */
    public Convention(String id, String title, Optional<String> by, Optional<String> when, Optional<String> work,
                      Weighing weighing, Sizing sizing, Turning turning, boolean decimalComma, Optional<String> cleaning) {
        this(id, title, by, when, work, weighing, sizing, turning, decimalComma, cleaning, Optional.empty());
    }

    /** The same convention with {@code gr} taken to mean this. */
    public Convention withGr(GrMeans gr) {
        return new Convention(id, title, by, when, work,
                new Weighing(weighing.instrument(), weighing.unit(), gr, weighing.resolution()), sizing, turning,
                decimalComma, cleaning, shortTitle);
    }

    /** What the letters "gr" stand for in a source. Never guessed. */
    public enum GrMeans { NOT_SAID, GRAINS, GRAMMES }

    /** Along which line a diameter was taken. */
    public enum Direction {
        NOT_SAID("not said"), GREATEST("greatest"), LEAST_AND_GREATEST("least and greatest"),
        TOP_TO_BOTTOM("top to bottom"), SIDE_TO_SIDE("side to side"),
        MEAN("mean of several"), FROM_PHOTOGRAPH("from a scaled photograph");

        private final String word;

        Direction(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** How a bare axis figure is to be understood. */
    public enum AxisNotation {
        NOT_SAID("not said"), HOURS("hours"), DEGREES("degrees"), ARROWS("arrows");

        private final String word;

        AxisNotation(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** A convention that says nothing: every unit must stand in the text. */
    public static final Convention UNDECLARED = new Convention("undeclared", "an undeclared convention",
            Optional.empty(), Optional.empty(), Optional.empty(),
            new Weighing(Optional.empty(), Optional.empty(), GrMeans.NOT_SAID, Optional.empty()),
            new Sizing(Optional.empty(), Optional.empty(), Direction.NOT_SAID, Optional.empty(), Optional.empty()),
            new Turning(AxisNotation.NOT_SAID, false, Optional.empty()), false, Optional.empty());
}
