package exergue.files;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The Git repository that a folder lies in.
 *
 * @param git    where the repository keeps its own files
 * @param inside path of the folder in the repository's tree, with forward slashes; empty for the tree itself
 */
public record GitFolder(File git, String inside) {

    private static final String ELSEWHERE = "gitdir: ";
    private static final long MOST_BYTES = 4096;

    /**
     * @param folder need not be there any more; then its repository is that of the nearest folder above it that is
     * @return empty if the folder lies in no work tree
     * @throws IOException if the disk fails
     */
    public static Optional<GitFolder> around(Path folder) throws IOException {
        Path named = folder.toAbsolutePath().normalize();
        Path known = named;
        while (!Files.exists(known) && known.getParent() != null) {
            known = known.getParent();
        }
        Path real = known.toRealPath().resolve(known.relativize(named));
        for (Path at = real; at != null; at = at.getParent()) {
            if (Files.exists(at.resolve(".git"))) {
                return Optional.of(new GitFolder(git(at.resolve(".git")).toFile(), at.relativize(real).toString().replace('\\', '/')));
            }
        }
        return Optional.empty();
    }

    /** A linked work tree and a submodule have a file there that says where the folder is. */
    static Path git(Path git) throws IOException {
        if (Files.isDirectory(git) || Files.size(git) > MOST_BYTES) {
            return git;
        }
        String text = Files.readString(git, StandardCharsets.UTF_8).strip();
        return text.startsWith(ELSEWHERE) ? git.resolveSibling(text.substring(ELSEWHERE.length())).normalize() : git;
    }
}
