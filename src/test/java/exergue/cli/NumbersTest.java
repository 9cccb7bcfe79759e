package exergue.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.exchange.BookNumbers;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NumbersTest {

    @TempDir
    private Path folder;

    @Test
    void numbersAreKeptForTheConcordanceOfTheNextEdition() throws IOException {
        String source = folder.resolve("mine").toString();
        Ran.command("start", source);
        Ran kept = Ran.command("numbers", source, "--edition", "T. Orr’s edition, ‘2026’");
        assertEquals(0, kept.code(), kept.all());
        assertTrue(kept.out().endsWith("former-numbers.yaml: 8 numbers\n"), kept.out());
        String yaml = Files.readString(folder.resolve("mine/former-numbers.yaml"));
        assertTrue(yaml.contains("edition: 'T. Orr’s edition, ‘2026’'\nnumbers:\n  - {coin: ov-"), yaml);
        Ran check = Ran.command("check", source);
        assertEquals(0, check.code(), check.all());
    }

    @Test
    void aBookWithOtherNumbersThanTheLastHasThemSideBySideWithTheOld() throws IOException {
        Path source = folder.resolve("mine");
        String book = folder.resolve("book").toString();
        Ran.command("start", source.toString());
        Ran.command("typeset", source.toString(), "--to", book);
        Ran same = Ran.command("typeset", source.toString(), "--to", book);
        assertFalse(Files.exists(folder.resolve("book/renumbered.csv")) || same.all().contains("renumbered"), same.all());

        Files.delete(source.resolve("coins/ov-1.yaml"));
        Ran other = Ran.command("typeset", source.toString(), "--to", book);
        assertEquals(0, other.code(), other.all());
        assertTrue(other.out().contains("renumbered.csv: old and new numbers; 7 coins had another number in the book that lay there before"),
                other.out());
        List<String> table = Files.readAllLines(folder.resolve("book/renumbered.csv"));
        assertEquals(List.of("former-number,number,id", "1,,ov-1", "2,1,ov-2"), table.subList(0, 3));
        assertEquals(9, table.size());
    }

    @Test
    void theListOfOldNumbersIsNoPartOfTheSourceThatTheBookLiesIn() throws IOException {
        Path source = folder.resolve("mine");
        Path book = source.resolve("book");
        Ran.command("start", source.toString());
        Ran.command("typeset", source.toString(), "--to", book.toString());
        Files.delete(source.resolve("coins/ov-1.yaml"));
        Ran.command("typeset", source.toString(), "--to", book.toString());
        byte[] first = Files.readAllBytes(book.resolve("catalogue.pdf"));
        assertTrue(Files.exists(book.resolve("renumbered.csv")));
        Ran.command("typeset", source.toString(), "--to", book.toString());
        assertArrayEquals(first, Files.readAllBytes(book.resolve("catalogue.pdf")));
    }

    @Test
    void whoForgotToKeepThemTakesThemFromTheBook() throws IOException {
        Path source = folder.resolve("mine");
        String book = folder.resolve("book").toString();
        Ran.command("start", source.toString());
        Ran.command("typeset", source.toString(), "--to", book);
        Files.delete(source.resolve("coins/ov-1.yaml"));
        Ran kept = Ran.command("numbers", source.toString(), "--of", book);
        assertEquals(0, kept.code(), kept.all());
        assertTrue(Files.readString(source.resolve("former-numbers.yaml")).contains("numbers:\n  - {coin: ov-1, number: 1}\n"));
        Ran none = Ran.command("numbers", source.toString(), "--replace", "--of", source.toString());
        assertEquals(2, none.code(), none.all());
        assertTrue(none.err().contains("has no catalogue.csv with the columns id and number"), none.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "a,b\n1,2\n", "id,id\n1,2\n", "id,number\n\"open,1\n", "\0"})
    void aTableThatIsNoneOfOursHasNoNumbers(String table) {
        assertEquals(Optional.empty(), BookNumbers.fromCsv(table));
    }

    @Test
    void thoseOfAnEditionBeforeAreReplacedOnlyWhenAsked() {
        String source = folder.resolve("mine").toString();
        Ran.command("start", source);
        Ran.command("numbers", source);
        Ran again = Ran.command("numbers", source);
        assertEquals(2, again.code(), again.all());
        assertTrue(again.err().contains("is already there, with the numbers of an edition before"), again.err());
        assertEquals(0, Ran.command("numbers", source, "--replace").code());
    }
}
