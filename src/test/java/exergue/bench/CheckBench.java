package exergue.bench;

import exergue.Exergue;
import exergue.Progress;
import exergue.files.FolderTree;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Times {@code check} on an invented catalogue: the whole command as a process of its own, then the check eight times
 * inside this one, with the processor seconds of each, which say more on a busy machine.
 */
public final class CheckBench {

    private static final Path WORK = Path.of("target", "bench");
    private static final int RUNS = 8;

    private CheckBench() { }

    /** Usage: numbers of coins, such as {@code 2000 10000}. */
    public static void main(String[] sizes) throws IOException, InterruptedException {
        for (String size : sizes) {
            Path source = WORK.resolve("check-" + size);
            if (!Files.exists(source)) {
                MakeCatalogue.main(new String[] {size, source.toString()});
            }
            System.out.printf("%n%s coins%n", size);
            long start = System.nanoTime();
            Bench.run("exergue.cli.Main", "check", source.toString(), "--format", "json");
            System.out.printf(Locale.ROOT, "  cold, whole process: %.2f s%n", Bench.seconds(start));
            for (int run = 1; run <= RUNS; run++) {
                long processor = processor();
                start = System.nanoTime();
                int findings = Exergue.check(new FolderTree(source), Progress.SILENT).findings().all().size();
                System.out.printf(Locale.ROOT, "  run %d: %.2f s, %.2f s of processor, %d findings%n", run, Bench.seconds(start),
                        (processor() - processor) / 1e9, findings);
            }
        }
    }

    private static long processor() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }
}
