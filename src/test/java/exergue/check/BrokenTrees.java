package exergue.check;

import exergue.files.FolderTree;
import exergue.finding.Finding;
import exergue.model.Catalogue;
import exergue.source.Loaded;
import exergue.source.SourceReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;

/** Small source trees, each broken in the one way its name says. */
final class BrokenTrees {

    private static final Path HOME = Path.of("src/test/resources/broken");

    private BrokenTrees() { }

    /** @throws AssertionError if the reader of the source finds any error: these trees are broken otherwise */
    static Catalogue read(String code) {
        try {
            Loaded loaded = SourceReader.read(new FolderTree(HOME.resolve(code)));
            if (loaded.findings().hasErrors()) {
                throw new AssertionError(code + ": " + loaded.findings().all());
            }
            return loaded.catalogue().orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A finding as approved files hold it. */
    static String words(Finding finding) {
        StringBuilder words = new StringBuilder(finding.severity().word() + " [" + finding.code().id() + "] " + finding.place()
                + (finding.path().isEmpty() ? "" : " " + finding.path()) + "\n  " + finding.what() + "\n  "
                + finding.remedy() + "\n");
        finding.related().forEach(other ->
                words.append("  see ").append(other.place()).append(": ").append(other.what()).append('\n'));
        return words.toString();
    }
}
