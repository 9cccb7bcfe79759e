package exergue.cli;

import exergue.files.FolderTree;
import exergue.files.GitFolder;
import exergue.files.Tree;
import exergue.finding.NearMiss;
import exergue.review.Collation;
import exergue.review.git.RevisionTree;
import exergue.review.git.Revisions;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** States of a catalogue by what a person calls them: a folder that is there, else a revision of the source's repository. */
final class NamedStates implements AutoCloseable {

    private static final Path USUAL = Path.of("catalogue-src");
    private static final String CATALOGUE = "catalogue.yaml";
    private static final int SHOWN_OF_HASH = 10;
    private static final Pattern IN_HISTORY = Pattern.compile("[~^@:]");

    /** @param name for people: "main (1a2b3c4d5e)" */
    record Named(String name, Collation.State state) { }

    private final Path source;
    private Optional<GitFolder> around;
    private Revisions revisions;

    /** @param source null for the usual one */
    NamedStates(Path source) throws IOException {
        this.source = source != null ? source : new FolderTree(Path.of("")).has(CATALOGUE) ? Path.of("") : USUAL;
    }

    /** The source as it lies on the disk. */
    Named readSource() throws IOException {
        return new Named(source.toString().isEmpty() ? "the folder you are in" : source.toString(),
                Collation.State.read(SourceFolder.open(source)));
    }

    /** @throws UsageException if nothing is called so */
    Named read(String name) throws IOException {
        if (name.isBlank()) {
            throw new UsageException("The name of a state is empty. Name a folder, a branch, a tag or a commit.");
        }
        Optional<Tree> folder = folder(name);
        if (folder.isPresent()) {
            return new Named(name, Collation.State.read(folder.get()));
        }
        GitFolder repository = repository(name);
        int colon = name.indexOf(':');
        String revision = colon <= 0 ? name : name.substring(0, colon);
        String inside = colon <= 0 ? repository.inside() : name.substring(colon + 1).replaceAll("^\\./|/$", "");
        RevisionTree tree = revisions.tree(revision, inside).orElseThrow(() -> unknown(revision));
        String shown = name + " (" + tree.commit().substring(0, SHOWN_OF_HASH) + ")";
        if (!tree.has(CATALOGUE)) {
            throw new UsageException("In " + shown + " there is no catalogue.yaml in "
                    + (inside.isEmpty() ? "the outermost folder" : "the folder “" + inside + "”")
                    + ". If the catalogue lay elsewhere then, name its folder after a colon: " + revision + ":FOLDER");
        }
        return new Named(shown, Collation.State.read(tree));
    }

    private static Optional<Tree> folder(String name) throws IOException {
        try {
            new FolderTree(Path.of(name));
            return Optional.of(SourceFolder.open(Path.of(name)));
        } catch (NoSuchFileException | NotDirectoryException | InvalidPathException e) {
            return Optional.empty();
        }
    }

    private GitFolder repository(String name) throws IOException {
        if (around == null) {
            around = GitFolder.around(source);
        }
        GitFolder repository = around.orElseThrow(() -> new UsageException("“" + name + "” is no folder, and it can be no "
                + "revision either, since “" + source.toAbsolutePath().normalize() + "” lies in no Git repository. Name a "
                + "folder, or the catalogue's folder with --source."));
        if (revisions == null) {
            revisions = Revisions.open(repository);
        }
        return repository;
    }

    private UsageException unknown(String revision) {
        String what = "“" + revision + "” is neither a folder nor a revision of the Git repository. ";
        return new UsageException(what + near(revision).map(near -> "Did you mean “" + near + "”?")
                .orElse("Name a branch, a tag or a commit; if this is a copy without its whole history, as hosted CI makes "
                        + "one, have it fetch the whole."));
    }

    /** Of a place in the history, such as {@code HEAD~3}, the name is right and the history too short. */
    private Optional<String> near(String revision) {
        try {
            List<String> names = revisions.names();
            boolean known = IN_HISTORY.matcher(revision).find() || names.contains(revision);
            return known ? Optional.empty() : NearMiss.of(revision, names);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        if (revisions != null) {
            revisions.close();
        }
    }
}
