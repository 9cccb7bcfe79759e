package exergue.photo.print;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * One side of a coin as it is printed.
 *
 * @param path   of the picture that is printed
 * @param file   that the entry names; the same, if it is printed as it is
 * @param width  on paper, in mm
 * @param height on paper, in mm; as long as nobody has opened the file it is taken to be as high as wide
 * @param shape  outline of a coin that is cut out, for browsers: places in per cent of width and height; else empty
 * @param tone   how light the coin is; empty where it was not found
 */
public record PrintedSide(String path, String file, BigDecimal width, BigDecimal height, String shape, Optional<Tone> tone) {

    /** A file as it is, of which nothing is known but its size on paper. */
    static PrintedSide unopened(String path, BigDecimal width) {
        return new PrintedSide(path, path, width, width, "", Optional.empty());
    }
}
