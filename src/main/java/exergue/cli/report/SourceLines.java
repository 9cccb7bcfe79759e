package exergue.cli.report;

import exergue.files.Tree;
import exergue.source.heldback.HeldBack;
import java.util.List;
import java.util.Optional;

/** The lines of the source, to be shown beside findings: as written, but without {@link HeldBack exact places}. Keeps the last file, since findings come file by file. */
final class SourceLines {

    private final Tree tree;
    private String file = "";
    private List<String> lines = List.of();

    SourceLines(Tree tree) {
        this.tree = tree;
    }

    /** The line with this number, counted from 1; empty if there is none. */
    Optional<String> line(String path, int number) {
        if (!path.equals(file)) {
            lines = path.equals(HeldBack.FILE) ? HeldBack.in(HeldBack.asWritten(tree, path)).shown() : HeldBack.asWritten(tree, path);
            file = path;
        }
        return number >= 1 && number <= lines.size() ? Optional.of(lines.get(number - 1)) : Optional.empty();
    }
}
