package exergue.typeset;

import exergue.files.Paths;
import exergue.files.Tree;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

/**
 * The files of the page templates: the catalogue's own where it has them, file by file, otherwise those that come
 * with the program.
 */
final class TemplateFiles {

    private static final String BUILT_IN = "exergue/templates/corpus/";

    private final Tree source;
    private final Optional<String> folder;

    TemplateFiles(Tree source, Optional<String> folder) {
        this.source = source;
        this.folder = folder.flatMap(Paths::inside);
    }

    /** Path inside the source tree, if the catalogue brings this file itself. */
    Optional<String> own(String name) {
        return folder.flatMap(f -> Paths.inside(name).map(n -> f + "/" + n)).filter(source::has);
    }

    /** Whether the catalogue brings any file of its own. */
    boolean anyOwn() throws IOException {
        String start = folder.map(f -> f + "/").orElse("");
        return !start.isEmpty() && source.files().stream().anyMatch(path -> path.startsWith(start));
    }

    /** Where an author looks for the file: in the tree, or among the program's templates. */
    String shown(String name) {
        return own(name).orElse("templates/corpus/" + name);
    }

    /** Empty if neither the catalogue nor the program has such a file. */
    Optional<byte[]> bytes(String name) throws IOException {
        Optional<String> own = own(name);
        if (own.isPresent()) {
            return Optional.of(source.read(own.get()));
        }
        Optional<String> inside = Paths.inside(name);
        if (inside.isEmpty()) {
            return Optional.empty();
        }
        try (InputStream in = TemplateFiles.class.getClassLoader().getResourceAsStream(BUILT_IN + inside.get())) {
            return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
        }
    }
}
