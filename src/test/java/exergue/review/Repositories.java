package exergue.review;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.eclipse.jgit.api.Git;
import org.eclipse.jgit.api.errors.GitAPIException;

/** Repositories for tests, made without a git program. */
public final class Repositories {

    private Repositories() { }

    /** Writes files into a folder and commits all that is there; makes a repository of it first if need be. @param tag of the commit */
    public static void commit(Path folder, Map<String, String> files, String tag) {
        try {
            for (Map.Entry<String, String> file : files.entrySet()) {
                Path path = folder.resolve(file.getKey());
                Files.createDirectories(path.getParent());
                Files.writeString(path, file.getValue());
            }
            try (Git git = Files.exists(folder.resolve(".git")) ? Git.open(folder.toFile())
                    : Git.init().setDirectory(folder.toFile()).setInitialBranch("main").call()) {
                git.add().addFilepattern(".").call();
                git.add().addFilepattern(".").setUpdate(true).call();
                git.commit().setMessage(tag).setAuthor("A. Author", "author@example.org").setCommitter("A. Author", "author@example.org")
                        .setSign(false).call();
                git.tag().setName(tag).setAnnotated(false).call();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (GitAPIException e) {
            throw new IllegalStateException(e);
        }
    }
}
