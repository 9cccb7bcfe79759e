package exergue.exchange.list;

import exergue.files.MemoryTree;
import exergue.files.OverlaidTree;
import exergue.files.Tree;
import exergue.finding.Finding;
import exergue.source.SourceReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Invented lists, entered into the small catalogue that the command start makes. */
final class Lists {

    private static final Path SKELETON = Path.of("src/main/resources/exergue/start");

    private Lists() { }

    /** The small catalogue, with a museum, its convention and a find-spot. */
    static Map<String, String> catalogue() {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> walk = Files.walk(SKELETON)) {
            for (Path file : walk.filter(Files::isRegularFile).toList()) {
                files.put(SKELETON.relativize(file).toString().replace('\\', '/'), Files.readString(file));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        files.merge("conventions.yaml", "\nmuseum:\n  title: the list of the Museum\n  weight: {unit: g}\n  diameter: {unit: mm}\n"
                + "  axis: {notation: hours}\ncomma:\n  title: a list with commas\n  weight: {unit: g}\n  decimal-mark: comma\n", String::concat);
        files.merge("collections.yaml", "town-museum: {name: Town Museum, sign: TM}\n", String::concat);
        files.put("find-spots.yaml", "harbour: {name: Harbour quarter}\n");
        return files;
    }

    static Tree tree() {
        return MemoryTree.ofText(catalogue());
    }

    static Entered enter(String list, String plan) {
        return enter(list.getBytes(StandardCharsets.UTF_8), plan, tree(), false);
    }

    static Entered enter(byte[] list, String plan, Tree tree, boolean addFigures) {
        try {
            return Entering.of(new NamedBytes("../museum.csv", list), new NamedBytes("../museum.yaml", plan.getBytes(StandardCharsets.UTF_8)),
                    SourceReader.read(tree).catalogue().orElseThrow(), tree, addFigures);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Tree after(Tree tree, Entered entered) {
        return new OverlaidTree(tree, new MemoryTree(entered.files()));
    }

    static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    /** The new entries, one after the other. */
    static String made(Entered entered) {
        return entered.made().values().stream().map(Lists::text).collect(Collectors.joining("\n"));
    }

    static String codes(Entered entered) {
        return entered.findings().all().stream().map(one -> one.code().id()).distinct().collect(Collectors.joining(", "));
    }

    /** As an approved file shows them. */
    static String shown(Collection<Finding> findings) {
        StringBuilder text = new StringBuilder();
        for (Finding finding : findings) {
            text.append(finding.severity().word()).append(' ').append(finding.code().id()).append(" at ").append(finding.place())
                    .append(finding.place().length() > 0 ? " for " + finding.place().length() : "").append("\n  ").append(finding.what())
                    .append("\n  ").append(finding.remedy()).append('\n');
        }
        return text.toString();
    }
}
