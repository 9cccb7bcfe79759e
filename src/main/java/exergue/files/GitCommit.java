package exergue.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The Git commit that a folder was last at, read from the repository's own small files: {@code HEAD}, the branch it
 * names, {@code packed-refs}. Whether the folder has been changed since cannot be seen this way, and is not said.
 */
public final class GitCommit {

    private static final String REFERENCE = "ref: ";
    private static final long MOST_BYTES = 16L << 20;

    private GitCommit() { }

    /** Forty (or sixty-four) hexadecimal figures; empty if the folder is in no Git work tree or has no commit yet. */
    public static Optional<String> of(Path folder) {
        try {
            for (Path at = folder.toRealPath(); at != null; at = at.getParent()) {
                if (Files.exists(at.resolve(".git"))) {
                    return commit(GitFolder.git(at.resolve(".git")));
                }
            }
        } catch (IOException | InvalidPathException e) {
            // A repository that cannot be read tells nothing; the book is made all the same.
            return Optional.empty();
        }
        return Optional.empty();
    }

    private static Optional<String> commit(Path git) throws IOException {
        String head = text(git.resolve("HEAD"));
        if (!head.startsWith(REFERENCE)) {
            return hash(head);
        }
        String name = head.substring(REFERENCE.length());
        if (Paths.inside(name).isEmpty()) {
            return Optional.empty();
        }
        Path shared = git.resolve("commondir");
        Path common = Files.exists(shared) ? git.resolve(text(shared)).normalize() : git;
        for (Path place : new Path[] {git, common}) {
            if (Files.isRegularFile(place.resolve(name))) {
                return hash(text(place.resolve(name)));
            }
        }
        return packed(common.resolve("packed-refs"), name);
    }

    private static Optional<String> packed(Path packed, String name) throws IOException {
        if (!Files.isRegularFile(packed)) {
            return Optional.empty();
        }
        try (Stream<String> lines = text(packed).lines()) {
            return lines.filter(line -> line.endsWith(" " + name)).findFirst()
                    .flatMap(line -> hash(line.substring(0, line.indexOf(' '))));
        }
    }

    private static Optional<String> hash(String text) {
        return Optional.of(text).filter(hash -> hash.matches("[0-9a-f]{40}|[0-9a-f]{64}"));
    }

    private static String text(Path file) throws IOException {
        if (Files.size(file) > MOST_BYTES) {
            throw new IOException("far too long for what it should hold: " + file);
        }
        return new String(Files.readAllBytes(file), StandardCharsets.UTF_8).strip();
    }
}
