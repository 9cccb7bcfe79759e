package exergue.photo;

/**
 * How large a picture may be before it is not even begun. A file of a few kilobytes can claim a thousand million pixels;
 * what it claims is looked at before anything is unpacked.
 *
 * @param pixels most that a picture may have, width times height
 * @param bytes  most that a file may have
 */
public record Limits(long pixels, long bytes) {

    /** More than any camera in use for coins gives. */
    public static final Limits USUAL = new Limits(100_000_000, 400L << 20);

    /** So many of a file’s own bits a pixel are foreseen for a picture of the greatest size; with more of them fewer pixels are read. */
    private static final int USUAL_BITS = 24;

    /** Most bytes that the pixels may take. */
    long unpacked() {
        return pixels * USUAL_BITS / Byte.SIZE;
    }
}
