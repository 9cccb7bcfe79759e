package exergue.study.statistic;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** What R gave: src/test/resources/statistic/expected.txt, made by expected.R beside it. */
final class Expected {

    private static final Path FILE = Path.of("src/test/resources/statistic/expected.txt");

    private Expected() { }

    static double[] all(String name) {
        try {
            return Files.readAllLines(FILE).stream().filter(line -> line.startsWith(name + " ")).findFirst()
                    .map(line -> Arrays.stream(line.substring(name.length()).strip().split(" ")).mapToDouble(Double::parseDouble).toArray())
                    .orElseThrow(() -> new AssertionError(FILE + " has no " + name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static double one(String name) {
        return all(name)[0];
    }

    static double[] sorted(String name) {
        double[] figures = all(name);
        Arrays.sort(figures);
        return figures;
    }
}
