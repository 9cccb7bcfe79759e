package exergue.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AgreementCommandTest {

    private static final String DEMO = "catalogue-src";

    @Test
    void printsTheTableAndOneSentenceForEachTwoHands(@TempDir Path folder) throws Exception {
        Ran ran = Ran.command("agreement", DEMO, "--to", folder.toString());
        assertEquals(0, ran.code(), ran.err());
        assertTrue(ran.out().startsWith("hands "), ran.out());
        assertTrue(ran.out().contains("In measurements at the bench, compared with"), ran.out());
        String plot = Files.readString(folder.resolve("bench-store-weight.svg"));
        assertTrue(plot.startsWith("<svg ") && plot.contains("Gentium Book Plus"), plot);
    }

    @Test
    void oneHandHasNothingToBeComparedWith() {
        Ran ran = Ran.command("agreement", "src/test/resources/broken/mint-never-used");
        assertEquals(0, ran.code());
        assertEquals("No coin was measured under two conventions, so there is nothing to compare.\n", ran.out());
    }

    @Test
    void aSourceWithErrorsIsComparedAsFarAsItGoes() {
        Ran ran = Ran.command("agreement", "src/test/resources/broken/unknown-type");
        assertEquals(1, ran.code());
        assertTrue(ran.err().contains("what they touch was left out"), ran.err());
    }
}
