package exergue.cli.report;

import exergue.files.Tree;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** The lines of the source as written, to be shown beside findings. Keeps the last file, since findings come file by file. */
final class SourceLines {

    private static final long TOO_LARGE_TO_SHOW = 16L << 20;

    private final Tree tree;
    private String file = "";
    private String[] lines = {};

    SourceLines(Tree tree) {
        this.tree = tree;
    }

    /** The line with this number, counted from 1; empty if there is none. */
    Optional<String> line(String path, int number) {
        if (!path.equals(file)) {
            lines = linesOf(path);
            file = path;
        }
        return number >= 1 && number <= lines.length ? Optional.of(lines[number - 1]) : Optional.empty();
    }

    private String[] linesOf(String path) {
        try {
            if (!tree.has(path) || tree.size(path) > TOO_LARGE_TO_SHOW) {
                return new String[0];
            }
            String text = new String(tree.read(path), StandardCharsets.UTF_8);
            return (text.startsWith("\uFEFF") ? text.substring(1) : text).split("\r\n|\r|\n", -1);
        } catch (IOException e) {
            return new String[0]; // the finding itself still says what is wrong
        }
    }
}
