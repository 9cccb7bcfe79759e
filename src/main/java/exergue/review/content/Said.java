package exergue.review.content;

import exergue.measure.Quantity;
import exergue.measure.Reading;
import java.util.List;
import java.util.stream.Collectors;

/** What stands in a field. Two of them say the same if their {@link #meaning()} is the same, however they are written. */
public sealed interface Said {

    /** For comparing only. */
    String meaning();

    /** For a reader. */
    String shown();

    /** A word, a number, a line of text. @param shown may be less than what is meant, where that must not be made public */
    record Words(String meaning, String shown) implements Said {

        public Words(String text) {
            this(text, text);
        }
    }

    /** A reading: the same figures in the same units are the same, whatever spelling the unit has. */
    record Figure(Reading reading) implements Said {

        @Override
        public String meaning() {
            return reading instanceof Reading.Read read ? meaning(read) : reading.getClass().getSimpleName() + " " + shown();
        }

        private static String meaning(Reading.Read read) {
            return read.form() + " " + read.qualifier() + " " + read.asRecorded().stream().map(Figure::text)
                    .collect(Collectors.joining("; "));
        }

        private static String text(Quantity quantity) {
            return quantity.value().toPlainString() + " " + quantity.unit().id() + " to "
                    + quantity.resolution().stripTrailingZeros().toPlainString();
        }

        /** The figure with its unit even where the entry leaves the unit to its convention. */
        @Override
        public String shown() {
            if (reading instanceof Reading.Read read && read.form() == Reading.Form.SINGLE && read.asRecorded().size() == 1
                    && read.qualifier() == Reading.Qualifier.NONE) {
                Quantity quantity = read.asRecorded().get(0);
                return quantity.value().toPlainString() + " " + quantity.unit().symbol();
            }
            return reading.recorded().strip();
        }
    }

    /** Several texts whose order counts: paragraphs, owners, keywords. */
    record Texts(List<String> texts) implements Said {

        public Texts {
            texts = List.copyOf(texts);
        }

        @Override
        public String meaning() {
            return String.join("\n", texts);
        }

        @Override
        public String shown() {
            return String.join("; ", texts);
        }
    }

    default boolean saysTheSameAs(Said other) {
        return meaning().equals(other.meaning());
    }
}
