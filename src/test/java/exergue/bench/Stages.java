package exergue.bench;

import exergue.Exergue;
import exergue.Progress;
import exergue.Stage;
import exergue.exchange.CatalogueCsv;
import exergue.exchange.CatalogueJson;
import exergue.files.Cache;
import exergue.files.FolderCache;
import exergue.files.FolderTree;
import exergue.files.WitnessedTree;
import exergue.photo.Workroom;
import exergue.photo.print.Darkroom;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;

/**
 * The pipeline several times in one process: processor seconds for each stage, compiling and collecting included, and
 * the most heap that was in use.
 */
public final class Stages implements Progress {

    private static final int RUNS = 4;

    private static final AtomicLong PEAK = new AtomicLong();

    private final Map<Stage, Double> seconds = new EnumMap<>(Stage.class);
    private Stage current;
    private long since;

    /** Usage: source folder, and how many times if not four. Pictures made for the page are kept beside the source. */
    public static void main(String[] arguments) throws IOException {
        watchHeap();
        int runs = arguments.length > 1 ? Integer.parseInt(arguments[1]) : RUNS;
        for (int run = 1; run <= runs; run++) {
            Stages stages = new Stages();
            long start = System.nanoTime();
            int pages = stages.run(Path.of(arguments[0]));
            stages.print(run == 1 ? "first run" : "run " + run, pages, Bench.seconds(start));
        }
    }

    private int run(Path source) throws IOException {
        Cache cache = new FolderCache(source.resolveSibling("pictures"));
        Exergue.Checked checked = Exergue.pictures(Exergue.check(new WitnessedTree(new FolderTree(source, Instant.now()), cache), this),
                Darkroom.with(cache, Runtime.getRuntime().availableProcessors(), new Workroom(Runtime.getRuntime().maxMemory() / 2)), this);
        Exergue.Publication publication;
        try (OutputStream pdf = new BufferedOutputStream(Files.newOutputStream(source.resolveSibling("book.pdf")))) {
            publication = Exergue.typeset(checked, pdf, this).publication().orElseThrow();
        }
        CatalogueJson.of(publication.rows());
        CatalogueCsv.of(publication.rows());
        close();
        return publication.pages();
    }

    @Override
    public void starts(Stage stage) {
        close();
        current = stage;
        since = processorTime();
    }

    private void close() {
        if (current != null) {
            seconds.merge(current, (processorTime() - since) / 1e9, Double::sum);
        }
    }

    private void print(String run, int pages, double clock) {
        StringBuilder line = new StringBuilder();
        seconds.forEach((stage, time) -> line.append(String.format(Locale.ROOT, ", %s %.2f",
                stage.name().toLowerCase(Locale.ROOT), time)));
        System.out.printf(Locale.ROOT, "  %s: %d pages%s; all %.2f s (clock %.2f s); peak heap %d MB%n", run,
                pages, line, seconds.values().stream().mapToDouble(d -> d).sum(), clock, PEAK.getAndSet(0) >> 20);
    }

    /** Nanoseconds, which other work on the machine does not lengthen as it does the time on the clock. */
    private static long processorTime() {
        return ManagementFactory.getPlatformMXBean(com.sun.management.OperatingSystemMXBean.class).getProcessCpuTime();
    }

    /** Looks every few milliseconds how much heap is in use; what lies there for the collector to take counts too. */
    private static void watchHeap() {
        Thread watch = new Thread(() -> {
            Runtime runtime = Runtime.getRuntime();
            while (!Thread.interrupted()) {
                PEAK.accumulateAndGet(runtime.totalMemory() - runtime.freeMemory(), Math::max);
                LockSupport.parkNanos(5_000_000);
            }
        }, "heap");
        watch.setDaemon(true);
        watch.start();
    }
}
