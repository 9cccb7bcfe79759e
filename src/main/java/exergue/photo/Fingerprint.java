package exergue.photo;

import exergue.files.Digest;
import java.nio.charset.StandardCharsets;

/** Names for the cache, made from everything that what they name depends on. */
public final class Fingerprint {

    /**
     * The way of finding outlines and of cutting. It is raised whenever either gives something else than before, so that nothing
     * made in the old way is taken from a cache.
     */
    public static final String METHOD = "4";

    private Fingerprint() { }

    /**
     * @param what   is kept
     * @param digest of the photograph
     * @param how    it was made, as far as that can differ
     */
    public static String of(String what, String digest, String how) {
        return Digest.of((what + " " + METHOD + " " + digest + " " + how).getBytes(StandardCharsets.UTF_8));
    }
}
