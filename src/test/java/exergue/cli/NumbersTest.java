package exergue.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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
