package exergue.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import exergue.bench.MakeCatalogue;
import exergue.files.MemoryTree;
import exergue.model.Catalogue;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** A source that is read again and again comes out as if it had been read for the first time. */
class KeptEntriesTest {

    private static final Map<String, String> FILES = MakeCatalogue.files(12);

    /** Edits that leave the source sound, break it, or change what entries are read against. */
    private static void edit(Map<String, String> files, Random random) {
        List<String> paths = new ArrayList<>(files.keySet());
        String path = paths.get(random.nextInt(paths.size()));
        switch (random.nextInt(6)) {
            case 0 -> files.put(path, files.get(path) + "# looked at\n");
            case 1 -> files.put(path, files.get(path).replace("type:", "tpye:"));
            case 2 -> files.put(path, FILES.getOrDefault(path, files.get(path)));
            case 3 -> files.put("coins/more-" + random.nextInt(3) + ".yaml", "id: more\ntype: t0000\n");
            case 4 -> files.put("house-style.yaml", "metals: {silver: {sign: AR, name: silver}}\nquotes: {outer: “”, inner: ‘’}\n".repeat(random.nextInt(2)));
            default -> files.keySet().removeIf(file -> file.startsWith("coins/more"));
        }
    }

    @Property(tries = 60)
    void nothingIsKeptThatHasChanged(@ForAll long seed) throws IOException {
        Random random = new Random(seed);
        Map<String, String> files = new TreeMap<>(FILES);
        KeptEntries kept = KeptEntries.fromNowOn();
        for (int reading = 0; reading < 6; reading++) {
            Loaded again = SourceReader.read(MemoryTree.ofText(files), kept);
            Loaded first = SourceReader.read(MemoryTree.ofText(files));
            assertEquals(first.catalogue(), again.catalogue());
            assertEquals(first.findings().all(), again.findings().all());
            edit(files, random);
        }
    }

    @Test
    void whatHasNotChangedIsNotReadAgain() throws IOException {
        KeptEntries kept = KeptEntries.fromNowOn();
        Map<String, String> files = new TreeMap<>(FILES);
        Catalogue before = SourceReader.read(MemoryTree.ofText(files), kept).catalogue().orElseThrow();
        files.compute("coins/t0000/c00001.yaml", (path, text) -> text + "note: Seen.\n");
        Catalogue after = SourceReader.read(MemoryTree.ofText(files), kept).catalogue().orElseThrow();
        assertSame(before.coins().get(0), after.coins().get(0));
        assertNotSame(before.coins().get(1), after.coins().get(1));
        assertSame(before.types().get(0), after.types().get(0));
    }
}
