package exergue.review.sheet;

import exergue.model.Catalogue;
import exergue.review.Collation;
import exergue.review.change.EntryChange;
import exergue.review.change.FieldChange;
import exergue.review.content.FieldWords;
import exergue.review.content.Said;
import exergue.review.content.Section;
import exergue.review.words.ConsequenceSentences;
import exergue.review.words.Passages;
import exergue.review.words.Sentences;
import exergue.typeset.SideBySide;
import exergue.typeset.SideBySide.Entry;
import exergue.typeset.SideBySide.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A comparison as a proof to be printed: of coins and types what the book prints of them; of everything else, and of a
 * change that is not printed, what its fields say.
 */
public final class ProofSheet {

    private final PrintedEntries before;
    private final PrintedEntries after;

    private ProofSheet(PrintedEntries before, PrintedEntries after) {
        this.before = before;
        this.after = after;
    }

    /** @param names of the two states, the earlier first; @param summary the whole in a sentence */
    public static SideBySide of(Collation collation, Catalogue old, Catalogue now, List<String> names, String summary) {
        ProofSheet proof = new ProofSheet(PrintedEntries.of(old), PrintedEntries.of(now));
        Map<Section, List<Entry>> sections = new TreeMap<>();
        collation.changes().entries().forEach(change ->
                sections.computeIfAbsent(change.subject().section(), any -> new ArrayList<>()).add(proof.entry(change)));
        List<String> consequences = new ArrayList<>(collation.changes().kinships().stream().map(Sentences::of).toList());
        consequences.addAll(ConsequenceSentences.of(collation.consequences()));
        String title = "Proof of changes: " + now.title().title().value();
        return new SideBySide(title, names.get(0), names.get(1), summary, consequences, sections.entrySet().stream()
                .map(section -> new SideBySide.Section(section.getKey().many(), section.getValue())).toList());
    }

    private Entry entry(EntryChange change) {
        List<Row> rows = printed(change);
        if (rows.isEmpty()) {
            rows = change.fields().stream().flatMap(field -> rows(change, field).stream()).toList();
        }
        return new Entry(Sentences.heading(change), change instanceof EntryChange.Altered ? Sentences.of(change) : List.of(), rows);
    }

    /** Every line the book prints of the entry on either side; empty where none of them has changed. */
    private List<Row> printed(EntryChange change) {
        Map<String, String> old = change instanceof EntryChange.Added ? Map.of()
                : before.of(change instanceof EntryChange.Altered altered ? altered.before() : change.subject());
        Map<String, String> now = change instanceof EntryChange.TakenOut ? Map.of() : after.of(change.subject());
        List<String> labels = new ArrayList<>(now.keySet());
        old.keySet().stream().filter(label -> !labels.contains(label)).forEach(labels::add);
        return old.equals(now) ? List.of() : labels.stream().map(label -> row(change, label, old.getOrDefault(label, ""),
                now.getOrDefault(label, ""))).toList();
    }

    private static Row row(EntryChange change, String label, String old, String now) {
        return change instanceof EntryChange.Altered ? MarkedWords.row(label, old, now) : MarkedWords.whole(label, old, now);
    }

    private static List<Row> rows(EntryChange change, FieldChange field) {
        String label = FieldWords.of(change.subject().section(), field.field());
        Optional<Said> old = field.before();
        Optional<Said> now = field.after();
        if (old.or(() -> now).get() instanceof Said.Texts && now.or(() -> old).get() instanceof Said.Texts) {
            return paragraphs(change, label, texts(old), texts(now));
        }
        return List.of(row(change, label, old.map(Said::shown).orElse(""), now.map(Said::shown).orElse("")));
    }

    private static List<String> texts(Optional<Said> said) {
        return said.map(texts -> ((Said.Texts) texts).texts()).orElse(List.of());
    }

    /** Only those that changed, each beside the one it has become. */
    private static List<Row> paragraphs(EntryChange change, String label, List<String> was, List<String> is) {
        List<Row> rows = new ArrayList<>();
        for (Passages passage : Passages.between(was, is)) {
            for (int i = 0; i < Math.max(passage.before().size(), passage.after().size()); i++) {
                int number = i + 1 + (i < passage.after().size() ? passage.to() : passage.from());
                rows.add(row(change, label + " " + number, at(passage.before(), i), at(passage.after(), i)));
            }
        }
        return rows;
    }

    private static String at(List<String> texts, int index) {
        return index < texts.size() ? texts.get(index) : "";
    }
}
