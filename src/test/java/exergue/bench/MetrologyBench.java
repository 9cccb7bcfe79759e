package exergue.bench;

import exergue.files.MemoryTree;
import exergue.model.Catalogue;
import exergue.model.CoinField;
import exergue.source.SourceReader;
import exergue.study.figure.Request;
import exergue.study.figure.Subject;
import exergue.study.figure.Subjects;
import exergue.study.figure.Wording;
import exergue.study.group.Coins;
import exergue.study.group.Gathering;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Weights, axes and diameters of an invented catalogue: every coin as one group, then divided by mint, ruler, denomination, metal and
 * type, in every form that has room for so many groups. Clock and processor seconds of each run in one process.
 */
public final class MetrologyBench {

    private static final int RUNS = 5;
    private static final List<CoinField> FIELDS = List.of(CoinField.MINT, CoinField.RULER, CoinField.DENOMINATION, CoinField.METAL, CoinField.TYPE);

    private MetrologyBench() { }

    /** Usage: number of coins. */
    public static void main(String[] arguments) throws IOException {
        int coins = Integer.parseInt(arguments[0]);
        Catalogue catalogue = SourceReader.read(tree(MakeCatalogue.files(coins))).catalogue().orElseThrow();
        for (int run = 1; run <= RUNS; run++) {
            long clock = System.nanoTime();
            double processor = processorSeconds();
            int[] made = run(catalogue);
            System.out.printf(Locale.ROOT, "run %d: %d groups, %d tables and charts, %.2f s, processor %.2f s%n", run, made[0], made[1],
                    Bench.seconds(clock), processorSeconds() - processor);
        }
    }

    private static MemoryTree tree(Map<String, String> texts) {
        Map<String, byte[]> files = new TreeMap<>();
        texts.forEach((path, text) -> files.put(path, text.getBytes(StandardCharsets.UTF_8)));
        return new MemoryTree(files);
    }

    private static int[] run(Catalogue catalogue) {
        Gathering gathering = Gathering.of(catalogue);
        int[] made = new int[2];
        show(List.of(gathering.all("every coin")), made);
        FIELDS.forEach(field -> show(gathering.by(List.of(field)), made));
        return made;
    }

    private static void show(List<Coins> groups, int[] made) {
        made[0] += groups.size();
        for (Subject subject : Subjects.metrology()) {
            for (String form : subject.forms()) {
                if (groups.size() <= subject.most(form)
                        && subject.show(form, new Request(groups, Optional.empty(), Wording.PLAIN)).isPresent()) {
                    made[1]++;
                }
            }
        }
    }

    private static double processorSeconds() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime() / 1e9;
    }
}
