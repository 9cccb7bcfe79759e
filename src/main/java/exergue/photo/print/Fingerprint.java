package exergue.photo.print;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Names for the cache, made from everything that what they name depends on. */
final class Fingerprint {

    /**
     * The way of finding outlines and of cutting. It is raised whenever either gives something else than before, so that nothing
     * made in the old way is taken from a cache.
     */
    static final String METHOD = "2";

    private Fingerprint() { }

    static String of(String text) {
        return of(text.getBytes(StandardCharsets.UTF_8));
    }

    static String of(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
