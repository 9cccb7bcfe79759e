package exergue.typeset;

/**
 * A picture as it came to stand on its page.
 *
 * @param path       of its file in the source tree
 * @param page       from 0
 * @param across     pixels
 * @param down       pixels
 * @param width      as printed, in points
 * @param height     as printed, in points
 * @param left       from the trimmed edge of the page, in points; likewise the other three
 * @param bits       of each colour of a pixel: 1 for line art
 * @param colours    of a pixel: 1 for grey, 3 for RGB
 */
record PlacedPicture(String path, int page, int across, int down, float width, float height, float left, float right,
                     float top, float bottom, int bits, int colours) {

    private static final float POINTS_AN_INCH = 72;

    /** Pixels an inch as printed, in the direction that has fewer. */
    int resolution() {
        return (int) (POINTS_AN_INCH * Math.min(across / width, down / height));
    }

    boolean isLineArt() {
        return bits == 1;
    }

    /** The smallest of its distances from the trimmed edges. */
    float fromEdge() {
        return Math.min(Math.min(left, right), Math.min(top, bottom));
    }
}
