package exergue;

import exergue.files.MemoryTree;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/** A tree of text files in which "a picture" stands for what a PNG file begins with. */
public final class PicturedTree {

    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};

    private PicturedTree() { }

    public static MemoryTree of(Map<String, String> texts) {
        Map<String, byte[]> files = new TreeMap<>();
        texts.forEach((path, text) -> files.put(path, text.equals("a picture") ? PNG : text.getBytes(StandardCharsets.UTF_8)));
        return new MemoryTree(files);
    }
}
