package exergue.source;

import exergue.files.MemoryTree;
import exergue.files.Tree;
import exergue.finding.Finding;
import exergue.finding.Findings;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Small trees for tests: a sound one, and others that differ from it in a few files. */
public final class Trees {

    private Trees() { }

    static Map<String, String> sound() {
        Map<String, String> files = new TreeMap<>();
        files.put("catalogue.yaml", "title: Coins of the Harbour\nlanguage: en\nparts:\n  front: [title]\n"
                + "  body: [chapters/history.md, catalogue]\n");
        files.put("chapters/history.md", "# History\n\nThe mint opened late.\n");
        files.put("conventions.yaml", "bench:\n  title: measurements at the bench\n");
        files.put("mints.yaml", "lampron:\n  name: Lampron\n");
        files.put("types/owl.yaml", "id: owl\nmint: lampron\ndenomination: Drachm\nmetal: silver\n");
        files.put("coins/lk-1.yaml", "id: lk-1\ntype: owl\nmeasured:\n  by: bench\n  weight: 3.87 g\n");
        return files;
    }

    static Tree with(String path, String text) {
        Map<String, String> files = sound();
        files.put(path, text);
        return MemoryTree.ofText(files);
    }

    static Tree with(String path, byte[] bytes) {
        Map<String, byte[]> files = soundBytes();
        files.put(path, bytes);
        return new MemoryTree(files);
    }

    private static Map<String, byte[]> soundBytes() {
        Map<String, byte[]> files = new TreeMap<>();
        sound().forEach((path, text) -> files.put(path, text.getBytes(StandardCharsets.UTF_8)));
        return files;
    }

    /** The sound tree, with the files of a folder laid over it. */
    public static Tree overlaid(Path folder) {
        try (Stream<Path> paths = Files.walk(folder)) {
            Map<String, byte[]> files = soundBytes();
            for (Path path : paths.filter(Files::isRegularFile).toList()) {
                files.put(folder.relativize(path).toString().replace('\\', '/'), Files.readAllBytes(path));
            }
            return new MemoryTree(files);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Loaded read(Tree tree) {
        try {
            return SourceReader.read(tree);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Findings findings(String path, String text) {
        return read(with(path, text)).findings();
    }

    /** Findings as an approved file shows them. */
    static String shown(Findings findings) {
        StringBuilder text = new StringBuilder();
        for (Finding finding : findings.all()) {
            text.append(finding.severity().word()).append(' ').append(finding.code().id()).append(" at ")
                    .append(finding.place());
            if (finding.place().length() > 0) {
                text.append(" for ").append(finding.place().length());
            }
            text.append(finding.path().isEmpty() ? "" : " (" + finding.path() + ")").append('\n');
            text.append("  ").append(finding.what()).append("\n  ").append(finding.remedy()).append('\n');
            finding.related().forEach(r -> text.append("  see ").append(r.place()).append(": ").append(r.what()).append('\n'));
        }
        return text.toString();
    }
}
