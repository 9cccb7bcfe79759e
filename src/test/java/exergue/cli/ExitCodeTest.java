package exergue.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine.Command;

/** The contract of the exit codes, and the sentence that goes with each. */
class ExitCodeTest {

    @TempDir
    private Path folder;

    @Command(name = "fails")
    private record Fails(Throwable failure) implements Callable<Integer> {
        @Override
        public Integer call() throws Exception {
            if (failure instanceof Error error) {
                throw error;
            }
            throw (Exception) failure;
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "typset | “typeset”",
        "check --fromat=json | “--format”",
        "check --format=xml | xml",
        "check here there | there",
        "reading | weight",
        "start | DIR",
        "explain unknwon-key | No finding is called “unknwon-key”",
        "enter pom.xml | --into",
        "enter no-such-list.csv --into catalogue-src | There is no file “no-such-list.csv”",
        "check nowhere-at-all | There is no folder “nowhere-at-all”",
        "typeset pom.xml | “pom.xml” is a file",
    })
    void wrongUsageIsTwoAndSaysWhatToType(String words, String said) {
        Ran ran = Ran.command(words.split(" "));
        assertAll(() -> assertEquals(2, ran.code(), ran.all()),
                () -> assertTrue(ran.err().contains(said), ran.err()),
                () -> assertEquals("", ran.out()));
    }

    @Test
    void noCommandIsTwoAndNamesThem() {
        Ran ran = Ran.command();
        assertEquals(2, ran.code());
        assertTrue(ran.err().contains("typeset, check, tidy, reading, agreement, gauge, metrology, dies, match, start, enter, numbers, collate, proof, explain"), ran.err());
    }

    @Test
    void aBrokenSourceIsOneAndTheLastBookStays() throws IOException {
        Path source = Files.createDirectories(folder.resolve("source"));
        Files.writeString(source.resolve("catalogue.yaml"), "titel: A Book\n");
        Path book = Files.createDirectories(folder.resolve("book"));
        Files.writeString(book.resolve("catalogue.pdf"), "the last good book");
        Ran ran = Ran.command("typeset", source.toString(), "--to", book.toString());
        assertEquals(1, ran.code(), ran.all());
        assertTrue(ran.out().contains("No book was made"), ran.out());
        assertEquals("the last good book", Files.readString(book.resolve("catalogue.pdf")));
        try (Stream<Path> left = Files.list(book)) {
            assertEquals(1, left.count(), "nothing else is left lying about");
        }
    }

    @Test
    void aBookThatFailsWhileItIsSetLeavesNoFolder() throws IOException {
        Path source = folder.resolve("source");
        Ran.command("start", source.toString());
        Files.writeString(source.resolve("catalogue.yaml"), Files.readString(source.resolve("catalogue.yaml"))
                + "\ntemplates: templates\n");
        Files.writeString(Files.createDirectories(source.resolve("templates")).resolve("book.ftlh"), "${nothing.of.the.kind}");
        Ran ran = Ran.command("typeset", source.toString(), "--to", folder.resolve("new/book").toString());
        assertEquals(1, ran.code(), ran.all());
        assertTrue(ran.out().contains("template-fault"), ran.out());
        assertTrue(Files.notExists(folder.resolve("new")));
    }

    @Test
    void anEmptyFolderIsASourceWithAnError() {
        Ran ran = Ran.command("check", folder.toString());
        assertEquals(1, ran.code(), ran.all());
        assertTrue(ran.out().contains("catalogue.yaml"), ran.out());
    }

    static Stream<Arguments> brokenThings() {
        return Stream.of(
                Arguments.of(new AccessDeniedException("book"), "“book” may not be read or written"),
                Arguments.of(new FileSystemException("book/x", null, "No space left on device"), "The disk is full"),
                Arguments.of(new FileSystemException("book/x", null, "Read-only file system"), "can only be read"),
                Arguments.of(new IOException("the cable is out"), "the cable is out"),
                Arguments.of(new OutOfMemoryError(), "-Xmx"),
                Arguments.of(new IllegalStateException("oops"), "a fault in Exergue, not in your source"),
                Arguments.of(new StackOverflowError(), "a fault in Exergue, not in your source"));
    }

    @ParameterizedTest
    @MethodSource("brokenThings")
    void aBrokenDiskOrProgramIsThreeInOneSentence(Throwable failure, String said) {
        Ran ran = Ran.with(new Fails(failure), "fails");
        assertEquals(3, ran.code());
        assertTrue(ran.err().contains(said), ran.err());
        assertFalse(ran.all().contains("\tat "), "no stack trace");
        assertEquals("", ran.out());
    }

    @Test
    void theTraceOfAFaultIsShownWhenAskedFor() {
        Ran ran = Ran.with(new Fails(new IllegalStateException("oops")), "fails", "--trace");
        assertEquals(3, ran.code());
        assertTrue(ran.err().contains("\tat exergue.cli.ExitCodeTest"), ran.err());
    }

    @Test
    void aTargetThatIsAFileIsThree() throws IOException {
        Path source = folder.resolve("source");
        assertEquals(0, Ran.command("start", source.toString()).code());
        Path target = Files.writeString(folder.resolve("target"), "a file");
        Ran ran = Ran.command("typeset", source.toString(), "--to", target.toString());
        assertEquals(3, ran.code(), ran.all());
        assertTrue(ran.err().contains("target” is a file"), ran.err());
    }
}
