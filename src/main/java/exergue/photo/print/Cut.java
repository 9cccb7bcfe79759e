package exergue.photo.print;

import exergue.photo.Fingerprint;

/**
 * Which part of a photograph becomes a picture for the page, and of how many pixels.
 *
 * @param source path of the photograph
 * @param digest of its bytes
 * @param side   which of the outlines on it is cut out, from 0; {@link #GROUND} if its ground is kept
 * @param frame  where it lies
 * @param grey   whether its colours become greys
 * @param ppi    pixels an inch as printed, which the file says of itself
 */
record Cut(String source, String digest, int side, Frame frame, boolean grey, int ppi) {

    static final int GROUND = -1;

    /**
     * @param left   where it begins on the photograph, in pixels of that
     * @param top    likewise
     * @param step   pixels of the photograph to one of the picture, no less than 1
     * @param width  of the picture, in its own pixels
     * @param height likewise
     */
    record Frame(double left, double top, double step, int width, int height) { }

    /** Says everything that the bytes of the picture depend on. */
    String name() {
        return Fingerprint.of("cut", digest, side + " " + Double.toHexString(frame.left()) + " "
                + Double.toHexString(frame.top()) + " " + Double.toHexString(frame.step()) + " " + frame.width() + " "
                + frame.height() + " " + grey + " " + ppi);
    }
}
