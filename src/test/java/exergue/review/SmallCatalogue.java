package exergue.review;

import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.files.MemoryTree;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/** An invented catalogue of two mints, four types and seven coins, to be changed a file at a time. */
public final class SmallCatalogue {

    private final Map<String, String> files;

    private SmallCatalogue(Map<String, String> files) {
        this.files = new TreeMap<>(files);
    }

    public SmallCatalogue() {
        this(Map.of());
        frame();
        type("owl", "lakonthos", "First issue", "Owl standing left", "10");
        type("bull", "lakonthos", "First issue", "Bull butting right", "20");
        type("wheel", "lakonthos", "Second issue", "Wheel of four spokes", "30");
        type("heron", "marsh", "Marsh issue", "Heron with an eel in its beak", "40");
        coin("lk-1", "owl", "3.78 g", "18 mm", "5 h", "O1", "R1", "A 1");
        coin("lk-2", "owl", "4.12 g", "17 mm", "6 h", "O1", "R2", "A 2");
        coin("lk-3", "bull", "4.05 g", "17.5 mm", "12 h", "O2", "R3", "A 3");
        coin("lk-4", "bull", "63.6 gr", "18 mm", "1 h", "O3", "R4", "A 4");
        coin("lk-5", "wheel", "1.35 g", "11 mm", "2 h", "O4", "R5", "A 5");
        coin("lk-6", "wheel", "1.29 g", "11 mm", "2 h", "O5", "R5", "A 6");
        coin("ma-1", "heron", "8.01 g", "22 mm", "7 h", "O9", "R9", "A 7");
    }

    private void frame() {
        files.put("catalogue.yaml", "title: Coins of the Coast\nlanguage: en\nparts: {front: [title, contents, chapters/history.md], "
                + "body: [methods, catalogue], back: [concordances, works]}\n");
        files.put("conventions.yaml", """
                bench:
                  title: measurements at the bench
                  by: the excavation staff
                  weight: {instrument: electronic balance, unit: g, gr: grains}
                  diameter: {instrument: sliding calliper, direction: greatest, unit: mm}
                  axis: {notation: hours}
                """);
        files.put("mints.yaml", "lakonthos: {name: Lakonthos}\nmarsh: {name: The Marsh Towns}\n");
        files.put("works.yaml", "vane: {sign: Vane, year: '1931', title: Coins with Birds}\n"
                + "orrin: {sign: Orrin, year: '1902', title: A Hand-list}\n");
        files.put("collections.yaml", "cabinet: {name: The Cabinet, sign: Cab.}\n");
        files.put("find-spots.yaml", "dune: {name: Coast of Lakonthos, exact: field behind the third dune, kind: single finds}\n");
        files.put("house-style.yaml", "metals: {silver: {sign: AR, name: silver}}\n");
        files.put("chapters/history.md", """
                # History

                The towns of the coast struck silver for three generations.

                Nobody knows who cut the first dies. The second issue is by another hand, which is seen best in the
                feathers of the owl and in the letters beside it.

                The mint was closed when the harbour silted up.
                """);
    }

    private void type(String id, String mint, String issue, String reverse, String number) {
        files.put("types/" + id + ".yaml", """
                id: %s
                mint: %s
                issue: %s
                denomination: drachm
                metal: silver
                date: -0319~/-0300~
                obverse: {description: 'Head of a nymph right; border of dots.'}
                reverse: {legend: ΛΑΚ, description: %s.}
                references: [{work: vane, number: '%s'}]
                """.formatted(id, mint, issue, reverse, number));
    }

    private void coin(String... of) {
        files.put("coins/" + of[0] + ".yaml", """
                id: %s
                type: %s
                measured: {by: bench, weight: %s, diameter: %s, axis: %s}
                dies: {obverse: %s, reverse: %s}
                collection: {id: cabinet, number: %s}
                """.formatted((Object[]) of));
    }

    /** The same with another text in a file; what is replaced must be there. */
    public SmallCatalogue with(String path, String from, String to) {
        assertTrue(files.containsKey(path) && files.get(path).contains(from), path + " has no “" + from + "”");
        return with(path, files.get(path).replace(from, to));
    }

    /** The same with another file. */
    public SmallCatalogue with(String path, String text) {
        SmallCatalogue other = new SmallCatalogue(files);
        other.files.put(path, text);
        return other;
    }

    /** The same with more at the end of a file. */
    public SmallCatalogue withMore(String path, String more) {
        return with(path, files.get(path) + more);
    }

    public SmallCatalogue without(String path) {
        SmallCatalogue other = new SmallCatalogue(files);
        assertTrue(other.files.remove(path) != null, "there is no " + path);
        return other;
    }

    /** The same with a file elsewhere, and one text in it replaced by another. */
    public SmallCatalogue moved(String path, String to, String from, String by) {
        return with(to, files.get(path).replace(from, by)).without(path);
    }

    public String text(String path) {
        return files.get(path);
    }

    public Map<String, String> files() {
        return Map.copyOf(files);
    }

    public MemoryTree tree() {
        return MemoryTree.ofText(files);
    }

    /** With files of any kind beside the texts. */
    public MemoryTree treeWith(Map<String, String> others) {
        Map<String, byte[]> all = new TreeMap<>();
        files.forEach((path, text) -> all.put(path, text.getBytes(StandardCharsets.UTF_8)));
        others.forEach((path, text) -> all.put(path, text.getBytes(StandardCharsets.UTF_8)));
        return new MemoryTree(all);
    }
}
