package exergue.cli.report;

import exergue.files.Tree;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** The lines of the source, to be shown beside findings: as written, but without {@link HeldBack exact places}. Keeps the last file, since findings come file by file. */
final class SourceLines {

    private static final long TOO_LARGE_TO_SHOW = 16L << 20;

    private final Tree tree;
    private String file = "";
    private List<String> lines = List.of();

    SourceLines(Tree tree) {
        this.tree = tree;
    }

    /** The line with this number, counted from 1; empty if there is none. */
    Optional<String> line(String path, int number) {
        if (!path.equals(file)) {
            lines = path.equals(HeldBack.FILE) ? HeldBack.in(asWritten(tree, path)).shown() : asWritten(tree, path);
            file = path;
        }
        return number >= 1 && number <= lines.size() ? Optional.of(lines.get(number - 1)) : Optional.empty();
    }

    /** None where the file is not there or too large. */
    static List<String> asWritten(Tree tree, String path) {
        try {
            if (!tree.has(path) || tree.size(path) > TOO_LARGE_TO_SHOW) {
                return List.of();
            }
            String text = new String(tree.read(path), StandardCharsets.UTF_8);
            return List.of((text.startsWith("\uFEFF") ? text.substring(1) : text).split("\r\n|\r|\n", -1));
        } catch (IOException e) {
            return List.of(); // the finding itself still says what is wrong
        }
    }
}
