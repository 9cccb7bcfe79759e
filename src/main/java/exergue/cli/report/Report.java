package exergue.cli.report;

import exergue.files.Tree;
import exergue.finding.Findings;
import exergue.source.heldback.HeldBackFindings;
import java.nio.file.Path;

/**
 * What a renderer is given.
 *
 * @param findings of the whole run; sentences come out without the exact find-spots they quote
 * @param tree     the source, for the lines the findings are about
 * @param source   the source folder as the reader typed it, so that printed places can be opened from where they are
 */
public record Report(Findings findings, Tree tree, String source) {

    public Report {
        findings = HeldBackFindings.of(findings, tree);
    }

    /** A path inside the tree, or beside it ({@code ../list.csv}), as seen from where the command was started. */
    String seen(String file) {
        String folder = source.replace('\\', '/');
        if (folder.equals(".") || folder.isEmpty()) {
            return file;
        }
        String path = folder.endsWith("/") ? folder + file : folder + "/" + file;
        return file.startsWith("../") ? Path.of(path).normalize().toString().replace('\\', '/') : path;
    }
}
