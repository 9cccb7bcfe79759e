package exergue.review;

import exergue.files.Tree;
import exergue.finding.Findings;
import exergue.model.Catalogue;
import exergue.review.change.Changes;
import exergue.review.change.Consequence;
import exergue.review.change.EntryChange;
import exergue.review.change.Subject;
import exergue.review.content.Section;
import exergue.review.consequence.Consequences;
import exergue.review.differ.Differ;
import exergue.source.Loaded;
import exergue.source.SourceReader;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Two states of a catalogue, compared by what they say.
 *
 * @param consequences what is otherwise in the book because of the changes
 * @param rewritten    files of coins and types that are written otherwise and say the same
 * @param unread       files that cannot be read in one of the states, and are not compared
 * @param identical    true where every file is the same byte for byte
 */
public record Collation(Changes changes, List<Consequence> consequences, List<String> rewritten, List<String> unread,
                        boolean identical) {

    public Collation {
        consequences = List.copyOf(consequences);
        rewritten = List.copyOf(rewritten);
        unread = List.copyOf(unread);
    }

    /** One state as it was read. @param catalogue empty where there is none to be compared; @param unread files that cannot be read */
    public record State(Tree tree, Optional<Catalogue> catalogue, Findings findings, Set<String> unread) {

        public State {
            unread = Set.copyOf(unread);
        }

        /** @throws IOException if the disk fails, never because of what a file says */
        public static State read(Tree tree) throws IOException {
            Loaded loaded = SourceReader.read(tree);
            return new State(tree, loaded.catalogue(), loaded.findings(), loaded.unread());
        }

        /** What is compared of it with another state: both must have a catalogue. */
        public Catalogue beside(State other) {
            return new Legible(catalogue.orElseThrow(), unread, other.catalogue().orElseThrow(), other.unread()).catalogue();
        }
    }

    /**
     * Compares two states that both have a catalogue.
     *
     * @throws IOException if a file of either cannot be read
     */
    public static Collation of(State before, State after) throws IOException {
        Catalogue old = before.beside(after);
        Catalogue now = after.beside(before);
        Set<String> unread = Legible.notCompared(before.unread(), after.unread());
        DifferingFiles files = DifferingFiles.between(before.tree(), after.tree());
        Differ.Side oldSide = Differ.Side.of(old).with(Section.FILES, files.before());
        Differ.Side newSide = Differ.Side.of(now).with(Section.FILES, files.after());
        Consequences.Followed followed = Consequences.of(oldSide, newSide, Differ.changes(oldSide, newSide));
        return new Collation(followed.changes(), followed.all(),
                rewritten(files.written(), followed.changes(), old, now).stream().filter(file -> !unread.contains(file)).toList(),
                List.copyOf(unread), files.isEmpty());
    }

    /** Of the differing files those of a coin or type that has not changed. */
    private static List<String> rewritten(List<String> written, Changes changes, Catalogue old, Catalogue now) {
        if (changes.isEmpty()) {
            return written;
        }
        Set<String> quiet = new TreeSet<>();
        Set<String> changed = ids(changes);
        now.coins().stream().filter(coin -> !changed.contains("coins " + coin.id().value()))
                .forEach(coin -> quiet.add(coin.place().file()));
        now.types().stream().filter(type -> !changed.contains("types " + type.id().value()))
                .forEach(type -> quiet.add(type.place().file()));
        return written.stream().filter(quiet::contains).toList();
    }

    private static Set<String> ids(Changes changes) {
        Set<String> ids = new TreeSet<>();
        changes.entries().stream().map(EntryChange::subject).map(Collation::id).forEach(ids::add);
        return ids;
    }

    private static String id(Subject subject) {
        return subject.section().name() + " " + subject.id();
    }
}
