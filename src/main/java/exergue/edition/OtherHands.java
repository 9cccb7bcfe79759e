package exergue.edition;

import exergue.measure.Kind;
import exergue.measure.Reading;
import exergue.model.Coin;
import exergue.model.HouseStyle;
import exergue.model.Measurement;
import exergue.model.ReadingChoice;
import exergue.model.Type;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The figures of a coin that are not the ones printed in its measurement line. */
final class OtherHands {

    /** One figure and the block it stands in. */
    record Other(Measurement measurement, Reading.Read read) { }

    private OtherHands() { }

    /** In the order of the entry, and within a block in the order of the house. */
    static List<Other> of(Coin coin, Type type, HouseStyle style) {
        ReadingChoice choice = ReadingChoice.of(style);
        List<Other> others = new ArrayList<>();
        Stream.concat(coin.measured().stream(), coin.alsoMeasured().stream()).forEach(block -> {
            for (Kind kind : style.printed()) {
                Optional<Written<Reading>> reading = block.reading(kind);
                boolean isPrinted = choice.choose(coin, type, kind).measurement().filter(chosen -> chosen == block).isPresent();
                if (!isPrinted && reading.isPresent() && reading.get().value() instanceof Reading.Read read) {
                    others.add(new Other(block, read));
                }
            }
        });
        return others;
    }
}
