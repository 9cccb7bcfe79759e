package exergue.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MatchCommandTest {

    private static final String DEMO = "catalogue-src";
    private static final String SHEET = "label,ticket,weight,diameter,axis\ntray 1,ark-004,10.43,17.5-20,\ntray 2,ark-010,15.77,25.5,9\n";

    private static Path sheet(Path folder, String text) throws Exception {
        return Files.writeString(folder.resolve("tray.csv"), text);
    }

    @Test
    void saysWhichCoinsTheyAre(@TempDir Path folder) throws Exception {
        Path answers = folder.resolve("answers.csv");
        Ran ran = Ran.command("match", DEMO, sheet(folder, SHEET).toString(), "--by", "bench", "--to", answers.toString());
        assertEquals(0, ran.code(), ran.err());
        assertTrue(ran.out().contains("label   ticket   is"), ran.out());
        assertTrue(ran.out().lines().anyMatch(line -> line.matches("tray 1 +ark-004 +ark-002 .*")), ran.out());
        assertTrue(ran.out().contains("2 coins: "), ran.out());
        assertTrue(Files.readString(answers).startsWith("label,ticket,coin,how-sure,candidates\r\ntray 1,ark-004,ark-002,"), ran.out());
    }

    @Test
    void saysWhereTheSheetIsWrong(@TempDir Path folder) throws Exception {
        Ran ran = Ran.command("match", DEMO, sheet(folder, "label,weight\n1,3.87\n").toString(), "--format", "concise");
        assertEquals(1, ran.code());
        assertTrue(ran.out().contains("tray.csv:2:3: error: "), ran.out());
    }

    @Test
    void namesTheConventionThatWasMeant(@TempDir Path folder) throws Exception {
        Ran ran = Ran.command("match", DEMO, sheet(folder, SHEET).toString(), "--by", "benhc");
        assertEquals(2, ran.code());
        assertTrue(ran.err().contains("Did you mean “bench”?"), ran.err());
    }

    @Test
    void aSheetThatIsNotThereIsSaid() {
        Ran ran = Ran.command("match", DEMO, "nowhere.csv");
        assertEquals(2, ran.code());
        assertTrue(ran.err().contains("There is no file “nowhere.csv”."), ran.err());
    }
}
