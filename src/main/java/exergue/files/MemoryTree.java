package exergue.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A tree held in memory: for tests and for what does not come from a disk. */
public final class MemoryTree implements Tree {

    private final Map<String, byte[]> files;

    public MemoryTree(Map<String, byte[]> files) {
        this.files = new TreeMap<>(files);
    }

    /** A tree of text files, encoded as UTF-8. */
    public static MemoryTree ofText(Map<String, String> texts) {
        Map<String, byte[]> bytes = new TreeMap<>();
        texts.forEach((path, text) -> bytes.put(path, text.getBytes(StandardCharsets.UTF_8)));
        return new MemoryTree(bytes);
    }

    @Override
    public List<String> files() {
        return List.copyOf(files.keySet());
    }

    @Override
    public boolean has(String path) {
        return files.containsKey(path);
    }

    @Override
    public byte[] read(String path) throws IOException {
        return file(path).clone();
    }

    @Override
    public long size(String path) throws IOException {
        return file(path).length;
    }

    private byte[] file(String path) throws NoSuchFileException {
        byte[] bytes = files.get(path);
        if (bytes == null) {
            throw new NoSuchFileException(path);
        }
        return bytes;
    }
}
