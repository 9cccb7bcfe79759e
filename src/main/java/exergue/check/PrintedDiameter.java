package exergue.check;

import exergue.finding.Place;
import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.measure.Reading;
import exergue.model.ReadingChoice;
import java.util.Optional;

/**
 * The diameter that the book prints of a coin, whoever took it; what the other hands say does not reach the reader of the line.
 *
 * @param path where it stands in the entry
 */
public record PrintedDiameter(Reading.Read read, Convention.Direction direction, Place place, String path) {

    /** Empty where no hand has a diameter. */
    public static Optional<PrintedDiameter> of(CoinOfType each, ReadingChoice choice) {
        ReadingChoice.Chosen chosen = choice.choose(each.coin(), each.type(), Kind.DIAMETER);
        return chosen.figure().flatMap(read -> Hand.of(each.coin()).stream()
                .filter(hand -> hand.measurement() == chosen.measurement().orElseThrow()).findFirst()
                .map(hand -> new PrintedDiameter(read, hand.measurement().convention().sizing().direction(),
                        chosen.reading().orElseThrow().place(), hand.path() + ".diameter")));
    }

    public String recorded() {
        return read.recorded();
    }

    /** True for one figure, neither two directions nor a range. */
    public boolean isSingle() {
        return read.form() == Reading.Form.SINGLE;
    }
}
