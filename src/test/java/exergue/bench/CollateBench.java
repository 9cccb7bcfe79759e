package exergue.bench;

import exergue.cli.collation.CollationFormat;
import exergue.cli.collation.Compared;
import exergue.files.GitFolder;
import exergue.review.Collation;
import exergue.review.Repositories;
import exergue.review.git.Revisions;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * Times {@code collate} on two revisions of an invented catalogue, of which the second has another weight in every
 * hundredth coin: the whole command as a process of its own, then the comparison four times inside this one.
 */
public final class CollateBench {

    private static final Path WORK = Path.of("target", "bench");
    private static final int RUNS = 4;
    private static final int EVERY = 100;

    private CollateBench() { }

    /** Usage: numbers of coins, such as {@code 2000 10000}. */
    public static void main(String[] sizes) throws IOException, InterruptedException {
        for (String size : sizes) {
            Path repository = WORK.resolve("collate-" + size);
            Path source = repository.resolve("source");
            if (!Files.exists(repository.resolve(".git"))) {
                commit(repository, Integer.parseInt(size));
            }
            System.out.printf("%n%s coins, two revisions%n", size);
            long start = System.nanoTime();
            Bench.run("exergue.cli.Main", "collate", "first", "second", "--source", source.toString(), "--format", "json");
            System.out.printf(Locale.ROOT, "  cold, whole process: %.2f s%n", Bench.seconds(start));
            for (int run = 1; run <= RUNS; run++) {
                inside(source, run);
            }
        }
    }

    private static void commit(Path repository, int coins) {
        Map<String, String> files = new LinkedHashMap<>();
        MakeCatalogue.files(coins).forEach((path, text) -> files.put("source/" + path, text));
        Repositories.commit(repository, files, "first");
        Map<String, String> changed = new LinkedHashMap<>();
        int coin = 0;
        for (Map.Entry<String, String> file : files.entrySet()) {
            if (file.getKey().startsWith("source/coins/") && coin++ % EVERY == 0) {
                changed.put(file.getKey(), file.getValue().replaceFirst("weight: (\\d)(\\d*)\\.(\\d)(\\d)", "weight: $1$2.$4$3"));
            }
        }
        Repositories.commit(repository, changed, "second");
    }

    private static void inside(Path source, int run) throws IOException {
        long clock = System.nanoTime();
        long processor = processorTime();
        GitFolder folder = GitFolder.around(source).orElseThrow();
        int entries;
        try (Revisions revisions = Revisions.open(folder)) {
            Collation collation = Collation.of(Collation.State.read(revisions.tree("first", folder.inside()).orElseThrow()),
                    Collation.State.read(revisions.tree("second", folder.inside()).orElseThrow()));
            CollationFormat.TEXT.render(new Compared("first", "second", collation));
            entries = collation.changes().entries().size();
        }
        System.out.printf(Locale.ROOT, "  run %d: %d entries changed; processor %.2f s (clock %.2f s)%n", run, entries,
                (processorTime() - processor) / 1e9, Bench.seconds(clock));
    }

    private static long processorTime() {
        return ManagementFactory.getPlatformMXBean(com.sun.management.OperatingSystemMXBean.class).getProcessCpuTime();
    }
}
