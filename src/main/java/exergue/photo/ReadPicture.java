package exergue.photo;

import java.util.OptionalDouble;

/** What came of reading the bytes of a picture. */
public sealed interface ReadPicture {

    /** The kinds of file that are read. */
    enum Format { JPEG, PNG, TIFF }

    /** What the pixels of the file were made of; a {@link Raster} is always grey or red, green and blue. */
    enum Colours { GREY, RGB, CMYK }

    /**
     * What a file is.
     *
     * @param bits of each sample, 8 or 16
     */
    record Kind(Format format, Colours colours, int bits) { }

    /**
     * A picture, upright: the rotation that a camera wrote beside the pixels has been carried out.
     *
     * @param ppi    pixels to the inch as the file says; empty where it does not say, says two, or says 72, which programs write that know nothing
     * @param asItIs true where the bytes of the file can be printed without being unpacked: a JPEG of 8 bits, grey or RGB,
     *               that need not be turned
     * @param turned true where the pixels lie otherwise in the file than upright
     */
    record Picture(Raster raster, Kind kind, OptionalDouble ppi, boolean asItIs, boolean turned)
            implements ReadPicture { }

    /** @param words the same for a message, as the end of a sentence: "it has 40000 × 30000 pixels, more than …" */
    record Unreadable(Reason reason, String words) implements ReadPicture { }

    /** Why a picture cannot be read. */
    enum Reason { NOT_A_PICTURE, DAMAGED, TOO_LARGE }
}
