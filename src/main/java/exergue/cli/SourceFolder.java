package exergue.cli;

import exergue.exchange.BookData;
import exergue.files.Cache;
import exergue.files.FolderTree;
import exergue.files.SelectedTree;
import exergue.files.Tree;
import exergue.files.WitnessedTree;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Set;

/** The source folder a command names. */
final class SourceFolder {

    private SourceFolder() { }

    /** The same, with a memory for photographs that have not changed since. */
    static Tree open(Path folder, Cache cache) throws IOException {
        return new WitnessedTree(open(folder), cache);
    }

    /**
     * The tree without the books made from it before: they may lie inside the folder, and the same source gives the
     * same bytes.
     *
     * @throws UsageException if there is no such folder
     */
    static Tree open(Path folder) throws IOException {
        try {
            return withoutBooks(new FolderTree(folder, Instant.now()));
        } catch (NotDirectoryException e) {
            throw new UsageException("“" + folder + "” is a file. Name the folder that holds catalogue.yaml.");
        } catch (NoSuchFileException e) {
            throw new UsageException("There is no folder “" + folder + "”. Name the folder that holds catalogue.yaml, "
                    + "or lay out a new one with the command start: java -jar exergue.jar start " + folder);
        }
    }

    static Tree withoutBooks(Tree whole) throws IOException {
        Set<String> made = Set.of(TypesetCommand.PDF, TypesetCommand.PRESS_PDF, TypesetCommand.RENUMBERED,
                CollateCommand.PDF, BookData.JSON, BookData.CSV);
        List<String> webs = whole.files().stream().filter(path -> path.endsWith("/" + TypesetCommand.WEB_LIST))
                .map(path -> path.substring(0, path.lastIndexOf('/') + 1)).toList();
        return new SelectedTree(whole, path -> !made.contains(path.substring(path.lastIndexOf('/') + 1))
                && webs.stream().noneMatch(path::startsWith));
    }
}
