package exergue.photo.print;

import exergue.model.PrintScale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A coin as it is printed.
 *
 * @param toScale false where nobody knows how large the coin is
 * @param scale   what it measures on paper to what it measures in the hand, if it is to scale
 */
public record PrintedCoin(Optional<PrintedSide> obverse, Optional<PrintedSide> reverse, boolean toScale, PrintScale scale) {

    /** Those of its sides that there are pictures of, the obverse first. */
    public Stream<PrintedSide> sides() {
        return Stream.concat(obverse.stream(), reverse.stream());
    }
}
