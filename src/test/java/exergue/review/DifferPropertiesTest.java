package exergue.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.files.MemoryTree;
import exergue.files.Tree;
import exergue.model.Catalogue;
import exergue.review.change.Changes;
import exergue.review.change.EntryChange;
import exergue.review.change.FieldChange;
import exergue.review.content.Contents;
import exergue.review.content.Facts;
import exergue.review.content.Field;
import exergue.review.content.Section;
import exergue.review.differ.Differ;
import exergue.source.SourceReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds of every comparison, whatever was done to the two catalogues. */
class DifferPropertiesTest {

    /** Things an editor does; each can be done to any state of the small catalogue. */
    private static final List<UnaryOperator<Map<String, String>>> EDITS = List.of(
            edit("coins/lk-1.yaml", "3.78 g", "3.87 g"), edit("coins/lk-2.yaml", "6 h", "12 h"),
            edit("coins/lk-3.yaml", "type: bull", "type: wheel"), edit("coins/lk-4.yaml", "63.6 gr", "4.1 g"),
            edit("coins/lk-5.yaml", "number: A 5", "number: A 50"), edit("coins/ma-1.yaml", "dies: {obverse: O9, reverse: R9}", "note: Worn."),
            edit("types/owl.yaml", "First issue", "Second issue"), edit("types/heron.yaml", "[{work: vane, number: '40'}]",
                    "[{work: vane, number: '41'}, {work: orrin, number: '3'}, {work: orrin, number: '4'}]"),
            edit("mints.yaml", "The Marsh Towns", "Towns of the Marsh"), edit("chapters/history.md", "Nobody knows", "\n\nNobody\n\nknows"),
            edit("house-style.yaml", "sign: AR", "sign: Ag"), edit("works.yaml", "'1902'", "'1903'"),
            edit("mints.yaml", "lakonthos: {name: Lakonthos}\n", ""), edit("find-spots.yaml", "third", "fourth"),
            take("coins/lk-6.yaml"), take("types/bull.yaml"), move("coins/lk-2.yaml", "coins/xx-2.yaml", "id: lk-2", "id: xx-2"),
            move("types/wheel.yaml", "types/cross.yaml", "id: wheel", "id: cross"),
            copy("coins/lk-1.yaml", "coins/lk-8.yaml", "id: lk-1", "id: lk-8"),
            copy("coins/ma-1.yaml", "coins/ma-2.yaml", "id: ma-1", "id: ma-2\nnumber: 44"));

    private static UnaryOperator<Map<String, String>> edit(String path, String from, String to) {
        return files -> put(files, path, files.getOrDefault(path, "").replace(from, to));
    }

    private static UnaryOperator<Map<String, String>> take(String path) {
        return files -> put(files, path, "");
    }

    private static UnaryOperator<Map<String, String>> copy(String path, String to, String from, String by) {
        return files -> put(files, to, files.getOrDefault(path, "").replace(from, by));
    }

    private static UnaryOperator<Map<String, String>> move(String path, String to, String from, String by) {
        return files -> put(copy(path, to, from, by).apply(files), path, "");
    }

    /** No text is no file. */
    private static Map<String, String> put(Map<String, String> files, String path, String text) {
        Map<String, String> other = new TreeMap<>(files);
        other.put(path, text);
        other.values().removeIf(String::isEmpty);
        return other;
    }

    @Provide
    Arbitrary<Map<String, String>> states() {
        return Arbitraries.of(EDITS).list().ofMaxSize(6).map(edits -> {
            Map<String, String> files = new SmallCatalogue().files();
            for (UnaryOperator<Map<String, String>> edit : edits) {
                files = edit.apply(files);
            }
            return files;
        });
    }

    @Property(tries = 100)
    void nothingIsOtherwiseThanItself(@ForAll("states") Map<String, String> state) {
        assertEquals(new Changes(List.of(), List.of()), Differ.changes(side(state), side(state)));
    }

    @Property(tries = 300)
    void theChangesBackAreTheChangesReversed(@ForAll("states") Map<String, String> before, @ForAll("states") Map<String, String> after) {
        Changes there = Differ.changes(side(before), side(after));
        Changes back = Differ.changes(side(after), side(before));
        assertEquals(there.reversed().entries(), back.entries());
        assertEquals(Set.copyOf(there.reversed().kinships()), Set.copyOf(back.kinships()));
        assertEquals(there, there.reversed().reversed());
    }

    @Property(tries = 300)
    void theChangesMakeTheNewOutOfTheOld(@ForAll("states") Map<String, String> before, @ForAll("states") Map<String, String> after) {
        Contents old = side(before).contents();
        Contents now = side(after).contents();
        Changes changes = Differ.changes(side(before), side(after));
        assertEquals(facts(now), applied(changes, facts(old)));
        assertEquals(facts(old), applied(changes.reversed(), facts(now)));
    }

    @Property(tries = 100)
    void theOrderOfTheFilesChangesNothing(@ForAll("states") Map<String, String> before, @ForAll("states") Map<String, String> after,
                                          @ForAll long seed) {
        assertEquals(Differ.changes(side(before), side(after)), Differ.changes(shuffled(before, seed), shuffled(after, seed + 1)));
    }

    @Property(tries = 50)
    void anEditIsSeen(@ForAll("states") Map<String, String> state) {
        Map<String, String> other = put(state, "coins/new.yaml", "id: new\ntype: heron\n");
        Changes changes = Differ.changes(side(state), side(other));
        assertFalse(changes.isEmpty());
        assertTrue(changes.entries().stream().anyMatch(change -> change.subject().id().equals("new")));
    }

    private static Differ.Side side(Map<String, String> files) {
        return side(MemoryTree.ofText(files));
    }

    private static Differ.Side side(Tree tree) {
        try {
            Catalogue catalogue = SourceReader.read(tree).catalogue().orElseThrow();
            return Differ.Side.of(catalogue);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Differ.Side shuffled(Map<String, String> files, long seed) {
        Tree sorted = MemoryTree.ofText(files);
        return side(new Tree() {
            @Override
            public List<String> files() throws IOException {
                List<String> all = new ArrayList<>(sorted.files());
                Collections.shuffle(all, new Random(seed));
                return all;
            }

            @Override
            public boolean has(String path) {
                return sorted.has(path);
            }

            @Override
            public byte[] read(String path) throws IOException {
                return sorted.read(path);
            }

            @Override
            public long size(String path) throws IOException {
                return sorted.size(path);
            }
        });
    }

    /** What everything means, by section, id and field; names of entries that point to a renamed one count as what they point to. */
    private static Map<String, Map<Field, String>> facts(Contents contents) {
        Map<String, Map<Field, String>> facts = new TreeMap<>();
        contents.sections().forEach((section, entries) -> entries.forEach((id, entry) -> {
            Map<Field, String> said = new TreeMap<>();
            Facts.of(entry).forEach((field, what) -> said.put(field, what.meaning()));
            said.keySet().removeIf(field -> field.path().equals("type"));
            facts.put(section.name() + " " + id, said);
        }));
        contents.orders().forEach((section, order) -> facts.computeIfAbsent(section.name() + " ", any -> new TreeMap<>()));
        return facts;
    }

    private static Map<String, Map<Field, String>> applied(Changes changes, Map<String, Map<Field, String>> to) {
        Map<String, Map<Field, String>> facts = new TreeMap<>(to);
        for (EntryChange change : changes.entries()) {
            if (change instanceof EntryChange.TakenOut || change instanceof EntryChange.Altered) {
                facts.remove(key(change instanceof EntryChange.Altered altered ? altered.before().id() : change.subject().id(), change));
            }
        }
        for (EntryChange change : changes.entries()) {
            if (change instanceof EntryChange.Added || change instanceof EntryChange.Altered) {
                Map<Field, String> said = change instanceof EntryChange.Altered altered
                        ? new TreeMap<>(to.get(key(altered.before().id(), change))) : new TreeMap<>();
                change.fields().stream().filter(field -> !field.field().path().equals("type")
                        && !field.field().path().equals("order") || change.subject().section().equals(Section.TYPES))
                        .forEach(field -> apply(field, said));
                facts.put(key(change.subject().id(), change), said);
            }
        }
        return facts;
    }

    private static void apply(FieldChange change, Map<Field, String> said) {
        assertEquals(change.before().map(before -> before.meaning()).orElse(null), said.get(change.field()), change.toString());
        if (change.after().isPresent()) {
            said.put(change.field(), change.after().get().meaning());
        } else {
            said.remove(change.field());
        }
    }

    private static String key(String id, EntryChange change) {
        return change.subject().section().name() + " " + id;
    }
}
