package exergue.photo;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Set;

/**
 * The pieces that a PNG is made of (ISO/IEC 15948, 5.3). Java’s reader unpacks all texts beside the pixels, however long they
 * become; nobody here reads them.
 */
final class PngChunks {

    private static final int SIGNATURE = 8;
    private static final int AROUND_DATA = 12; // length, type and sum
    private static final Set<Integer> TEXTS = Set.of(type("tEXt"), type("zTXt"), type("iTXt"));

    /** EXIF as TIFF 6.0 writes it: byte order, 42, where the directory begins; there the number of entries of twelve bytes each. */
    private static final int EXIF = type("eXIf");
    private static final int ENTRY = 12;
    private static final int ORIENTATION = 0x0112;

    private PngChunks() { }

    private static int type(String letters) {
        return letters.charAt(0) << 24 | letters.charAt(1) << 16 | letters.charAt(2) << 8 | letters.charAt(3);
    }

    /** What a camera or a picture program notes of how the picture lies, as EXIF counts it; 0 where it says nothing. */
    static int orientation(byte[] png) {
        ByteBuffer in = ByteBuffer.wrap(png);
        for (int at = SIGNATURE; at >= 0 && at + AROUND_DATA <= png.length;) {
            long length = in.getInt(at) & 0xFFFFFFFFL;
            if (in.getInt(at + 4) == EXIF && at + AROUND_DATA + length <= png.length) {
                return ofExif(in.slice(at + 8, (int) length));
            }
            at = (int) Math.min(png.length, at + AROUND_DATA + length);
        }
        return 0;
    }

    private static int ofExif(ByteBuffer exif) {
        if (exif.limit() < 8) {
            return 0;
        }
        exif.order(exif.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int directory = exif.getInt(4);
        if (directory < 0 || directory > exif.limit() - 2) {
            return 0;
        }
        int entries = exif.getShort(directory) & 0xFFFF;
        for (int i = 0, at = directory + 2; i < entries && at + ENTRY <= exif.limit(); i++, at += ENTRY) {
            if ((exif.getShort(at) & 0xFFFF) == ORIENTATION) {
                return exif.getShort(at + 8);
            }
        }
        return 0;
    }

    /** The same file without its texts; the very same bytes where there are none. What is not as it should be is left to the reader. */
    static byte[] withoutTexts(byte[] png) {
        ByteBuffer in = ByteBuffer.wrap(png);
        ByteArrayOutputStream kept = null;
        int at = SIGNATURE;
        int done = 0;
        while (at + AROUND_DATA <= png.length) {
            long length = in.getInt(at) & 0xFFFFFFFFL;
            int next = (int) Math.min(png.length, at + AROUND_DATA + length);
            if (TEXTS.contains(in.getInt(at + 4))) {
                kept = kept == null ? new ByteArrayOutputStream(png.length) : kept;
                kept.write(png, done, at - done);
                done = next;
            }
            at = next;
        }
        if (kept == null) {
            return png;
        }
        kept.write(png, done, png.length - done);
        return kept.toByteArray();
    }
}
