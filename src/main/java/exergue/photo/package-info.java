/**
 * Photographs measured. {@link exergue.photo.PictureReader} turns the bytes of a file into a {@link exergue.photo.Raster};
 * {@link exergue.photo.Outliner} finds the coin on it, as an {@link exergue.photo.Outline}, or refuses;
 * {@link exergue.photo.ScaleBar} and {@link exergue.photo.PictureScale} say how large it is, and
 * {@link exergue.photo.TwoOutlines} how the two sides stand to each other.
 *
 * <p>Places on a picture are in pixels, x to the right and y down, counted from the upper left corner of the upper left
 * pixel, so that the middle of that pixel is at 0.5, 0.5. Directions are degrees clockwise from straight up.
 */
package exergue.photo;
