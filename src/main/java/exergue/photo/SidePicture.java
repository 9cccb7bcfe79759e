package exergue.photo;

import java.util.Optional;

/**
 * One side of a coin on a photograph.
 *
 * @param path    of the file
 * @param outline of this side; the file may show the other side too
 */
public record SidePicture(String path, Gauged.Measured picture, Outline outline) {

    /**
     * The surest scale there is without the coin’s own diameter: the scale bar, then the width that the entry gives. What a
     * file says of pixels to the inch is left out, since a camera writes there whatever it likes.
     *
     * @param widthMm how wide the whole picture is at life size, if the entry says so
     */
    public Optional<PictureScale> scale(Optional<Double> widthMm) {
        if (picture.bar() instanceof ScaleBarRead.Read bar) {
            return Optional.of(PictureScale.of(bar));
        }
        return widthMm.map(mm -> PictureScale.ofWidth(picture.width(), mm));
    }
}
