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
public record CoinPicture(Optional<SidePicture> obverse, Optional<SidePicture> reverse, boolean toScale, PrintScale scale) {

    /** Those of its sides that there are pictures of, the obverse first. */
    public Stream<SidePicture> sides() {
        return Stream.concat(obverse.stream(), reverse.stream());
    }
}
