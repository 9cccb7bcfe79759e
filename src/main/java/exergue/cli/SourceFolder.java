package exergue.cli;

import exergue.files.FolderTree;
import exergue.files.Tree;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;

/** The source folder a command names. */
final class SourceFolder {

    private SourceFolder() { }

    /** @throws UsageException if there is no such folder */
    static Tree open(Path folder) throws IOException {
        try {
            return new FolderTree(folder);
        } catch (NotDirectoryException e) {
            throw new UsageException("“" + folder + "” is a file. Name the folder that holds catalogue.yaml.");
        } catch (NoSuchFileException e) {
            throw new UsageException("There is no folder “" + folder + "”. Name the folder that holds catalogue.yaml, "
                    + "or lay out a new one with: exergue start " + folder);
        }
    }
}
