package exergue.demo;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Draws and measures the graded coins, and writes what came out to docs/accuracy.md. */
public final class MakeAccuracyPage {

    private MakeAccuracyPage() { }

    public static void main(String[] arguments) throws Exception {
        Files.writeString(Path.of("docs/accuracy.md"), Accuracy.page(Accuracy.of(Accuracy.COINS, MakePhotographs.face())), StandardCharsets.UTF_8);
    }
}
