package exergue.typeset;

import exergue.files.Digest;
import exergue.files.Tree;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;

/**
 * What identifies this state of the book inside the PDF: a digest of its source. There is no date in it, so that
 * the same source gives the same bytes on any day and any machine.
 *
 * @param digest hexadecimal figures, at least 32
 */
public record Stamp(String digest) {

    private static final int LEAST = 32;

    public Stamp {
        if (!digest.matches("[0-9a-f]{" + LEAST + ",}")) {
            throw new IllegalArgumentException("a stamp is at least " + LEAST + " hexadecimal figures: " + digest);
        }
    }

    /**
     * The stamp of a whole tree: every path and every byte counts.
     *
     * @param program name and version of the program, which has its part in the pages too
     * @throws IOException if a file of the tree cannot be read
     */
    public static Stamp of(Tree source, String program) throws IOException {
        MessageDigest digest = Digest.sha256();
        digest.update(program.getBytes(StandardCharsets.UTF_8));
        for (String path : source.files()) {
            digest.update((path + '\0' + source.digest(path) + '\0').getBytes(StandardCharsets.UTF_8));
        }
        return new Stamp(HexFormat.of().formatHex(digest.digest()));
    }

    /** The first sixteen bytes, as a PDF wants its identifier. */
    byte[] identifier() {
        return HexFormat.of().parseHex(digest, 0, LEAST);
    }
}
