package exergue.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.AllCodes;
import exergue.Golden;
import exergue.files.MemoryTree;
import exergue.files.Tree;
import exergue.finding.Code;
import exergue.measure.ReadingFault;
import exergue.source.keys.Readings;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every kind of fault has a tree with that fault, and an approved text of what the reader says to it. */
class BrokenTreesTest {

    private static final Path BROKEN = Path.of("src/test/resources/broken");
    private static final Path APPROVED = Path.of("src/test/resources/golden/source");

    /** What a convention has to say for some faults to be possible. */
    private static final Map<ReadingFault, String> CONVENTIONS = Map.of(
            ReadingFault.SIZE_NOT_IN_TABLE, "  diameter: {size-scale: mionnet-1805}\n",
            ReadingFault.FINER_THAN_INSTRUMENT, "  weight: {resolution: 0.1 g}\n");

    /** Trees that no version control would keep unchanged, or that lack a file. */
    private static final Map<String, Tree> MADE_HERE = Map.of(
            "not-utf-8", Trees.with("coins/lk-1.yaml",
                    "id: lk-1\r\ntype: owl\r\ndiameter-means: d\u00E9couvert\r\n".getBytes(StandardCharsets.ISO_8859_1)),
            "file-too-large", Trees.with("coins/lk-1.yaml", new byte[(1 << 20) + 1]),
            "control-character", Trees.with("coins/lk-1.yaml", "id: lk-1\ntype: owl\ndiameter-means: a\u200Bb\u0007 across\n"),
            "not-composed", Trees.with("coins/lk-1.yaml", "id: lk-1\ntype: owl\ndiameter-means: Lykia\u0301n\n"),
            "tangled-prose", Trees.with("chapters/history.md", "# History\n\n" + "> ".repeat(40) + "a\n"),
            "paragraph-too-long", Trees.with("chapters/history.md", "# History\n\n" + "<a ".repeat(30_000) + "\n"),
            "no-catalogue-file", MemoryTree.ofText(Map.of("catalogue-src/catalogue.yaml", "title: Coins\n")));

    static List<String> codes() {
        Set<String> readings = new HashSet<>(Readings.codes().stream().map(Code::id).toList());
        return SourceCodes.all().stream().map(Code::id).filter(id -> !readings.contains(id)).toList();
    }

    @ParameterizedTest
    @MethodSource("codes")
    void aTreeWithTheFaultGivesTheApprovedFindings(String code) {
        Tree tree = MADE_HERE.containsKey(code) ? MADE_HERE.get(code) : Trees.overlaid(BROKEN.resolve(code));
        Loaded loaded = Trees.read(tree);
        assertTrue(loaded.findings().all().stream().anyMatch(f -> f.code().id().equals(code)), () -> Trees.shown(loaded.findings()));
        Golden.check(APPROVED.resolve(code).resolve("findings.txt"), Trees.shown(loaded.findings()));
    }

    @ParameterizedTest
    @MethodSource("exergue.measure.ReadingFault#values")
    void theFaultySampleOfAReadingHasItsFault(ReadingFault fault) {
        String sample = fault.faulty().replace("\n", "\n  ");
        Map<String, String> files = Trees.sound();
        files.merge("conventions.yaml", CONVENTIONS.getOrDefault(fault, ""), String::concat);
        files.put("coins/lk-1.yaml", "id: lk-1\ntype: owl\nmeasured:\n  by: bench\n  " + sample + "\n");
        Loaded loaded = Trees.read(MemoryTree.ofText(files));
        assertTrue(loaded.findings().all().stream().anyMatch(f -> f.code().id().equals(fault.id())),
                () -> Trees.shown(loaded.findings()));
    }

    @Test
    void everyCodeIsUniqueAndExplained() {
        Set<String> ids = new TreeSet<>();
        for (Code code : SourceCodes.all()) {
            assertTrue(ids.add(code.id()), code.id());
            assertTrue(!code.title().endsWith(".") && code.why().endsWith("."), code.id());
            assertTrue(!code.faulty().equals(code.mended()), code.id());
        }
    }

    @Test
    void theSoundTreeHasNoFindings() {
        Loaded loaded = Trees.read(MemoryTree.ofText(Trees.sound()));
        assertEquals("", Trees.shown(loaded.findings()));
        assertEquals("lk-1", loaded.catalogue().orElseThrow().coins().get(0).id().value());
    }

    @Test
    void noFixtureIsLeftOver() throws IOException {
        Set<String> known = new HashSet<>(AllCodes.all().stream().map(Code::id).toList());
        assertEquals(List.of(), folders(BROKEN).filter(name -> !known.contains(name) || MADE_HERE.containsKey(name)).toList());
        assertEquals(List.of(), folders(APPROVED).filter(name -> !codes().contains(name)).toList());
    }

    private static Stream<String> folders(Path parent) throws IOException {
        try (Stream<Path> folders = Files.list(parent)) {
            return folders.map(f -> f.getFileName().toString()).sorted().toList().stream();
        }
    }
}
