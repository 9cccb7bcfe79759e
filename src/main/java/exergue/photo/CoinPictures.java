package exergue.photo;

import exergue.model.Coin;
import exergue.model.Written;
import exergue.photo.Gauged.Measured;
import exergue.photo.Gauged.NotRead;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The two sides of a coin on its photographs: each in a file of its own, or side by side in one, the obverse to the left.
 *
 * @param missed files of which nothing can be measured
 */
public record CoinPictures(Optional<SidePicture> obverse, Optional<SidePicture> reverse, List<Missed> missed) {

    public CoinPictures {
        missed = List.copyOf(missed);
    }

    /**
     * A file of which nothing can be measured.
     *
     * @param unread true where it could not even be read
     * @param words  why, as the end of a sentence
     * @param remedy a full sentence
     */
    public record Missed(Written<String> path, boolean unread, String words, String remedy) { }

    /** @param gauged what a file shows; empty for a file that is not there */
    public static CoinPictures of(Coin.Photograph photograph, Function<String, Optional<Gauged>> gauged) {
        List<Missed> missed = new ArrayList<>();
        List<SidePicture> first = sides(photograph.obverse(), gauged, missed);
        boolean oneFile = photograph.reverse().isEmpty() || photograph.obverse().isPresent()
                && photograph.reverse().get().value().equals(photograph.obverse().get().value());
        List<SidePicture> second = oneFile ? first.stream().skip(1).toList() : sides(photograph.reverse(), gauged, missed);
        return new CoinPictures(first.stream().findFirst(), second.stream().reduce((left, right) -> right), missed);
    }

    private static List<SidePicture> sides(Optional<Written<String>> path, Function<String, Optional<Gauged>> gauged, List<Missed> missed) {
        Optional<Gauged> found = path.flatMap(written -> gauged.apply(written.value()));
        if (found.isEmpty()) {
            return List.of();
        }
        if (found.get() instanceof NotRead unread) {
            missed.add(new Missed(path.get(), true, unread.words(), "Copy the file anew from where it came, or save it again from a "
                    + "picture program, not larger than needed."));
            return List.of();
        }
        Measured measured = (Measured) found.get();
        if (measured.outlined() instanceof Outlined.Refused refused) {
            missed.add(new Missed(path.get(), false, refused.reason().words(), refused.reason().remedy()));
            return List.of();
        }
        return ((Outlined.Found) measured.outlined()).outlines().stream()
                .map(outline -> new SidePicture(path.get().value(), measured, outline)).toList();
    }

    /** The axis that the two edges give; empty where there are not both. */
    public Optional<AxisFromOutlines> axis() {
        return obverse.flatMap(front -> reverse.map(back -> TwoOutlines.axis(front.outline(), back.outline())));
    }
}
