package exergue.bench;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Times the whole pipeline on invented catalogues. For each size: a process of its own from start to end (cold), then
 * the stages inside one, first and later runs. Beside the book it leaves the same text for other programs to print.
 */
public final class Bench {

    private static final Path WORK = Path.of("target", "bench");

    private Bench() { }

    /**
     * Usage: numbers of coins, such as {@code 2000 10000}; {@code -Dbench.heap=1g} sets the heap, {@code
     * -Dbench.flags} further flags of the Java machine.
     */
    public static void main(String[] sizes) throws IOException, InterruptedException {
        System.out.printf(Locale.ROOT, "Java %s, %d processors, heap %s %s%n", Runtime.version(),
                Runtime.getRuntime().availableProcessors(), heap(), String.join(" ", flags()));
        for (String size : sizes) {
            Path source = WORK.resolve(size).resolve("source");
            MakeCatalogue.write(Integer.parseInt(size), source);
            System.out.printf("%n%s coins%n", size);
            cold(source);
            inside(source);
        }
    }

    private static void cold(Path source) throws IOException, InterruptedException {
        Path book = source.resolveSibling("book");
        long start = System.nanoTime();
        run("exergue.cli.Main", "typeset", source.toString(), "--to", book.toString(), "--format", "concise");
        System.out.printf(Locale.ROOT, "  cold, whole process: %.2f s, PDF %d kB%n", seconds(start),
                Files.size(book.resolve("catalogue.pdf")) / 1000);
        Peers.write(source, book, source.resolveSibling("peers"));
    }

    private static void inside(Path source) throws IOException, InterruptedException {
        run("exergue.bench.Stages", source.toString());
    }

    static void run(String mainClass, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx" + heap()));
        command.addAll(flags());
        command.addAll(List.of("-cp", classPath(), mainClass));
        command.addAll(List.of(arguments));
        int exit = new ProcessBuilder(command).inheritIO().start().waitFor();
        if (exit != 0) {
            throw new IllegalStateException(mainClass + " ended with " + exit);
        }
    }

    private static String heap() {
        return System.getProperty("bench.heap", "1g");
    }

    private static List<String> flags() {
        String flags = System.getProperty("bench.flags", "");
        return flags.isBlank() ? List.of() : List.of(flags.strip().split("\\s+"));
    }

    /** Of this very program, also where Maven has started it with a class loader of its own. */
    private static String classPath() {
        if (!(Bench.class.getClassLoader() instanceof URLClassLoader loader)) {
            return System.getProperty("java.class.path");
        }
        List<String> places = new ArrayList<>();
        for (URL url : loader.getURLs()) {
            try {
                places.add(Path.of(url.toURI()).toString());
            } catch (URISyntaxException e) {
                throw new IllegalStateException(e);
            }
        }
        return String.join(System.getProperty("path.separator"), places);
    }

    static double seconds(long start) {
        return (System.nanoTime() - start) / 1e9;
    }
}
