package exergue.photo;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;

/** Small files that claim to hold much, put together by the specifications of TIFF 6.0, PNG (ISO/IEC 15948) and EXIF 2.32. */
final class Bombs {

    private static final int WIDTH = 256;
    private static final int LENGTH = 257;
    private static final int BITS = 258;
    private static final int COMPRESSION = 259;
    private static final int PHOTOMETRIC = 262;
    private static final int STRIPS = 273;
    private static final int SAMPLES = 277;
    private static final int ROWS_OF_STRIP = 278;
    private static final int BYTES_OF_STRIP = 279;
    private static final int TILE_WIDTH = 322;
    private static final int TILE_LENGTH = 323;
    private static final int TILES = 324;
    private static final int BYTES_OF_TILE = 325;
    private static final int AFTER = 200;
    private static final int LONG = 4;

    private Bombs() { }

    /** A grey TIFF of 100 × 100 pixels that says something absurd of how its pixels lie in the file. */
    static byte[] tiff(String claim) {
        long[][] claims = switch (claim) {
            case "two thousand million strips" -> new long[][] {{STRIPS, 0x7FFFFFFF, AFTER}, {ROWS_OF_STRIP, 1, 1}, {BYTES_OF_STRIP, 0x7FFFFFFF, AFTER}};
            case "a hundred million strips" -> new long[][] {{STRIPS, 100_000_000, AFTER}, {ROWS_OF_STRIP, 1, 1}, {BYTES_OF_STRIP, 100_000_000, AFTER}};
            case "a strip of four thousand million bytes" -> new long[][] {{STRIPS, 1, AFTER}, {ROWS_OF_STRIP, 1, 100}, {BYTES_OF_STRIP, 1, 0xFFFFFFF0L}};
            case "rows without end in a strip" -> new long[][] {{STRIPS, 1, AFTER}, {ROWS_OF_STRIP, 1, 0xFFFFFFFFL}, {BYTES_OF_STRIP, 1, 100}};
            case "sixty thousand samples" -> new long[][] {{STRIPS, 1, AFTER}, {SAMPLES, 1, 60_000}, {BYTES_OF_STRIP, 1, 100}};
            case "a tile larger than the world" -> new long[][] {{TILE_WIDTH, 1, 0x7FFFFFF0}, {TILE_LENGTH, 1, 0x7FFFFFF0}, {TILES, 1, AFTER}, {BYTES_OF_TILE, 1, 100}};
            case "a tile of ten thousand million pixels" -> new long[][] {{TILE_WIDTH, 1, 100_000}, {TILE_LENGTH, 1, 100_000}, {TILES, 1, AFTER}, {BYTES_OF_TILE, 1, 100}};
            default -> throw new IllegalArgumentException(claim);
        };
        long[][] plain = {{WIDTH, 1, 100}, {LENGTH, 1, 100}, {BITS, 1, 8}, {COMPRESSION, 1, 1}, {PHOTOMETRIC, 1, 1}};
        ByteBuffer out = ByteBuffer.allocate(400).order(ByteOrder.LITTLE_ENDIAN).put((byte) 'I').put((byte) 'I').putShort((short) 42).putInt(8)
                .putShort((short) (plain.length + claims.length));
        for (long[][] entries : new long[][][] {plain, claims}) {
            for (long[] entry : entries) {
                out.putShort((short) entry[0]).putShort((short) LONG).putInt((int) entry[1]).putInt((int) entry[2]);
            }
        }
        return out.array();
    }

    /** A TIFF whose directory says that the next one is itself. */
    static byte[] endlessTiff() {
        return ByteBuffer.allocate(14).order(ByteOrder.LITTLE_ENDIAN).put((byte) 'I').put((byte) 'I').putShort((short) 42).putInt(8)
                .putShort((short) 0).putInt(8).array();
    }

    /** The PNG with a text of so many million zeros, compressed to a thousandth, put before its pixels. */
    static byte[] withText(byte[] png, int millions) throws IOException {
        ByteArrayOutputStream text = new ByteArrayOutputStream();
        text.write("zTXtComment\0\0".getBytes(StandardCharsets.ISO_8859_1));
        try (DeflaterOutputStream deflated = new DeflaterOutputStream(text)) {
            for (int i = 0; i < millions; i++) {
                deflated.write(new byte[1_000_000]);
            }
        }
        CRC32 sum = new CRC32();
        sum.update(text.toByteArray());
        int header = 8 + 25; // the signature and the first chunk, IHDR
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(png, 0, header);
        out.write(ByteBuffer.allocate(4).putInt(text.size() - 4).array());
        out.write(text.toByteArray());
        out.write(ByteBuffer.allocate(4).putInt((int) sum.getValue()).array());
        out.write(png, header, png.length - header);
        return out.toByteArray();
    }

    /** The JPEG with an EXIF segment whose one tag, the rotation, claims so many values. */
    static byte[] withRotations(byte[] jpeg, int count) throws IOException {
        ByteBuffer exif = ByteBuffer.allocate(6 + 8 + 2 + 12 + 4).order(ByteOrder.BIG_ENDIAN).put("Exif\0\0".getBytes(StandardCharsets.US_ASCII))
                .put("MM\0*".getBytes(StandardCharsets.US_ASCII)).putInt(8).putShort((short) 1).putShort((short) 0x0112).putShort((short) 3)
                .putInt(count).putInt(8).putInt(0);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        out.write(ByteBuffer.allocate(4).putShort((short) 0xFFE1).putShort((short) (exif.capacity() + 2)).array());
        out.write(exif.array());
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }
}
