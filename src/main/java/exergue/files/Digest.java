package exergue.files;

import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4), by which bytes are told from others without being kept: 64 hexadecimal figures. */
public final class Digest {

    private static final int PIECE = 1 << 16;

    private Digest() { }

    public static String of(byte[] bytes) {
        return HexFormat.of().formatHex(sha256().digest(bytes));
    }

    /** Of all that is left in the stream, which is not closed and of which no more than a piece is held at a time. */
    static String of(InputStream in) throws IOException {
        MessageDigest digest = sha256();
        byte[] piece = new byte[PIECE];
        for (int read = in.read(piece); read >= 0; read = in.read(piece)) {
            digest.update(piece, 0, read);
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    /** For what is put together out of parts. */
    public static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
