package exergue.typeset;

import exergue.files.Paths;
import exergue.files.Tree;
import exergue.model.TemplateChoice;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;

/**
 * The files of the page templates. Each is looked for first among the catalogue's own, then in the chosen set, then
 * among what all sets share.
 */
final class TemplateFiles {

    private static final String BUILT_IN = "exergue/templates/";
    private static final String SHARED = "shared";

    private final Tree source;
    private final Optional<String> folder;
    private final List<String> builtIn;

    TemplateFiles(Tree source, TemplateChoice templates) {
        this.source = source;
        this.folder = templates.own().flatMap(Paths::inside);
        this.builtIn = List.of(templates.set().word(), SHARED);
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
        return own(name).orElseGet(() -> "templates/" + builtIn.stream()
                .filter(set -> getClass().getClassLoader().getResource(BUILT_IN + set + "/" + name) != null)
                .findFirst().orElse(builtIn.get(0)) + "/" + name);
    }

    /** Empty if neither the catalogue nor the program has such a file. */
    Optional<byte[]> bytes(String name) throws IOException {
        Optional<String> own = own(name);
        if (own.isPresent()) {
            return Optional.of(source.read(own.get()));
        }
        Optional<String> inside = Paths.inside(name);
        for (String set : inside.isPresent() ? builtIn : List.<String>of()) {
            try (InputStream in = getClass().getClassLoader().getResourceAsStream(BUILT_IN + set + "/" + inside.get())) {
                if (in != null) {
                    return Optional.of(in.readAllBytes());
                }
            }
        }
        return Optional.empty();
    }
}
