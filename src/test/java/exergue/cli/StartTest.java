package exergue.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From nothing to a book in two commands. */
class StartTest {

    private static final Path SKELETON = Path.of("src/main/resources/exergue/start");

    @TempDir
    private Path folder;

    @Test
    void everyFileOfTheSkeletonIsLaidOut() throws IOException {
        try (Stream<Path> files = Files.walk(SKELETON)) {
            assertEquals(files.filter(Files::isRegularFile)
                            .map(file -> SKELETON.relativize(file).toString().replace('\\', '/')).sorted().toList(),
                    StartCommand.FILES.stream().sorted().toList());
        }
    }

    @Test
    void whatStartLaysOutTypesetsAtOnceWithoutAnyFinding() throws IOException {
        Path source = folder.resolve("mine");
        Ran start = Ran.command("start", source.toString());
        assertEquals(0, start.code(), start.all());
        Ran typeset = Ran.command("typeset", source.toString());
        assertEquals(0, typeset.code(), typeset.all());
        assertTrue(typeset.out().matches("catalogue\\.pdf: \\d+ pages, 8 entries, 0 errors, 0 warnings, in .*mine.book\n"),
                typeset.out());
        for (String file : List.of("catalogue.pdf", "catalogue.json", "catalogue.csv")) {
            assertTrue(Files.size(source.resolve("book").resolve(file)) > 100, file);
        }
    }

    @Test
    void theSameSourceGivesTheSameBytesAlsoWhereTheLastBookLies() throws IOException {
        Path source = folder.resolve("mine");
        Ran.command("start", source.toString());
        for (String book : List.of("one", "two")) {
            Ran.command("typeset", source.toString(), "--to", folder.resolve(book).toString());
            Ran.command("typeset", source.toString());
        }
        for (String file : List.of("catalogue.pdf", "catalogue.json", "catalogue.csv")) {
            byte[] first = Files.readAllBytes(folder.resolve("one").resolve(file));
            assertArrayEquals(first, Files.readAllBytes(folder.resolve("two").resolve(file)), file);
            assertArrayEquals(first, Files.readAllBytes(source.resolve("book").resolve(file)), file);
        }
    }

    /** What is copied from it merges as well as docs/review.md promises. */
    @Test
    void whatStartLaysOutIsTidy() throws IOException {
        Path source = folder.resolve("mine");
        Ran.command("start", source.toString());
        Ran tidy = Ran.command("tidy", source.toString(), "--check");
        assertEquals(0, tidy.code(), tidy.all());
    }

    @Test
    void nothingIsEverOverwritten() throws IOException {
        Path works = folder.resolve("works.yaml");
        Files.writeString(works, "mine");
        Ran ran = Ran.command("start", folder.toString());
        assertEquals(2, ran.code(), ran.all());
        assertTrue(ran.err().contains("works.yaml” is already there"), ran.err());
        assertEquals("mine", Files.readString(works));
        try (Stream<Path> files = Files.walk(folder)) {
            assertEquals(List.of(works), files.filter(Files::isRegularFile).toList(), "nothing was added");
        }
    }
}
