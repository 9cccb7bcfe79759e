package exergue.typeset;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.files.MemoryTree;
import exergue.files.Tree;
import exergue.model.HouseStyle.Rows;
import exergue.model.TemplateChoice;
import exergue.model.TemplateSet;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A set of templates is a folder that an author can copy and change. */
class CopiedSetTest {

    private static final Path SETS = Path.of("templates");

    private static byte[] pdf(Tree tree, TemplateChoice templates) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertEquals(List.of(), Typesetter.typeset(SampleBook.of(4, 8), SampleBook.setting(tree, Rows.ALIGNED, templates), out)
                .findings().all());
        return out.toByteArray();
    }

    private static Map<String, byte[]> with(String folder) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (String photograph : SampleBook.tree().files()) {
            files.put(photograph, SampleBook.tree().read(photograph));
        }
        try (Stream<Path> templates = Files.list(SETS.resolve(folder))) {
            for (Path template : templates.sorted().toList()) {
                files.put("own/" + template.getFileName(), Files.readAllBytes(template));
            }
        }
        return files;
    }

    @ParameterizedTest
    @EnumSource(TemplateSet.class)
    void aCopyOfTheSetMakesTheSameBook(TemplateSet set) throws IOException {
        byte[] copied = pdf(new MemoryTree(with(set.word())), new TemplateChoice(TemplateSet.CORPUS, Optional.of("own")));
        assertArrayEquals(pdf(SampleBook.tree(), new TemplateChoice(set, Optional.empty())), copied);
    }

    @Test
    void aChangeInOneCopiedFileShowsAndTheOthersStayTheProgramsOwn() throws IOException {
        Map<String, byte[]> files = with("collection");
        files.remove("own/entries.css");
        String entries = new String(files.get("own/entries.ftlh"), java.nio.charset.StandardCharsets.UTF_8);
        files.put("own/entries.ftlh", entries.replace("${coin.number}", "No. ${coin.number}")
                .getBytes(java.nio.charset.StandardCharsets.UTF_8));
        String lines = PlacedLines.of(pdf(new MemoryTree(files), new TemplateChoice(TemplateSet.COLLECTION, Optional.of("own"))));
        assertTrue(lines.contains("No. 1"), lines);
        assertFalse(PlacedLines.of(pdf(SampleBook.tree(), new TemplateChoice(TemplateSet.COLLECTION, Optional.empty())))
                .contains("No. 1"));
    }

    @ParameterizedTest
    @EnumSource(TemplateSet.class)
    void everySetHasItsGuideAndNothingThatTheSetsShare(TemplateSet set) throws IOException {
        Path folder = SETS.resolve(set.word());
        try (Stream<Path> files = Files.list(folder)) {
            for (String name : files.map(file -> file.getFileName().toString()).sorted().toList()) {
                boolean guide = name.equals("README.md");
                assertEquals(guide, Files.exists(SETS.resolve("shared").resolve(name)), name);
                assertTrue(guide || Files.readString(folder.resolve("README.md")).contains("`" + name + "`"), name);
            }
        }
    }
}
