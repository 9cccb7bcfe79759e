package exergue.photo;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.util.Set;

/**
 * The pieces that a PNG is made of (ISO/IEC 15948, 5.3). Java’s reader unpacks all texts beside the pixels, however long they
 * become; nobody here reads them.
 */
final class PngChunks {

    private static final int SIGNATURE = 8;
    private static final int AROUND_DATA = 12; // length, type and sum
    private static final Set<Integer> TEXTS = Set.of(type("tEXt"), type("zTXt"), type("iTXt"));

    private PngChunks() { }

    private static int type(String letters) {
        return letters.charAt(0) << 24 | letters.charAt(1) << 16 | letters.charAt(2) << 8 | letters.charAt(3);
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
