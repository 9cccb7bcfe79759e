package exergue.review.differ;

import exergue.edition.BookOrder;
import exergue.edition.Numbering;
import exergue.measure.PrintForm;
import exergue.model.Catalogue;
import exergue.review.change.Changes;
import exergue.review.change.EntryChange;
import exergue.review.change.FieldChange;
import exergue.review.change.Kinship;
import exergue.review.change.Subject;
import exergue.review.content.Contents;
import exergue.review.content.Field;
import exergue.review.content.Said;
import exergue.review.content.Section;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Compares two catalogues entry by entry and field by field. */
public final class Differ {

    /** One of the two catalogues. */
    public record Side(Catalogue catalogue, Contents contents, Numbering numbers) {

        public static Side of(Catalogue catalogue) {
            return new Side(catalogue, Contents.of(catalogue), Numbering.of(BookOrder.of(catalogue)));
        }

        public Side with(Section section, Map<String, Object> entries) {
            return new Side(catalogue, contents.with(section, entries), numbers);
        }

        private PrintForm form() {
            return catalogue.style().form();
        }

        Subject subject(Section section, String id) {
            return new Subject(section, id, section.equals(Section.COINS) ? numbers.of(id) : Optional.empty());
        }
    }

    private final Side before;
    private final Side after;
    private final FieldDiffer fields;
    private final List<EntryChange> changes = new ArrayList<>();
    private final Map<Section, Map<String, String>> became = new TreeMap<>();

    private Differ(Side before, Side after) {
        this.before = before;
        this.after = after;
        this.fields = new FieldDiffer(before.form(), after.form(), became);
    }

    public static Changes changes(Side before, Side after) {
        return new Differ(before, after).changes();
    }

    private Changes changes() {
        TreeSet<Section> sections = new TreeSet<>(before.contents().sections().keySet());
        sections.addAll(after.contents().sections().keySet());
        sections.forEach(section -> became.put(section, same(before.contents().in(section), after.contents().in(section))));
        sections.forEach(this::compare);
        return new Changes(changes, kinships());
    }

    private void compare(Section section) {
        Map<String, Object> old = before.contents().in(section);
        Map<String, Object> now = after.contents().in(section);
        Map<String, String> same = became.get(section);
        same.forEach((oldId, newId) -> compare(section, oldId, newId));
        without(now, same.values()).forEach((id, entry) ->
                changes.add(new EntryChange.Added(after.subject(section, id), FieldDiffer.given(entry))));
        without(old, same.keySet()).forEach((id, entry) ->
                changes.add(new EntryChange.TakenOut(before.subject(section, id), FieldDiffer.gone(entry))));
        order(section, same);
    }

    /** What each old entry is called now: by the same id, or by one that it was renamed to. */
    private static Map<String, String> same(Map<String, Object> old, Map<String, Object> now) {
        Map<String, String> same = new LinkedHashMap<>();
        old.keySet().stream().filter(now::containsKey).forEach(id -> same.put(id, id));
        same.putAll(Kin.renamed(without(old, same.keySet()), without(now, same.keySet())));
        return same;
    }

    private static Map<String, Object> without(Map<String, Object> entries, Collection<String> ids) {
        Set<String> left = new HashSet<>(ids);
        Map<String, Object> rest = new LinkedHashMap<>();
        entries.forEach((id, entry) -> {
            if (!left.contains(id)) {
                rest.put(id, entry);
            }
        });
        return rest;
    }

    private void compare(Section section, String oldId, String newId) {
        Object old = before.contents().in(section).get(oldId);
        Object now = after.contents().in(section).get(newId);
        if (oldId.equals(newId) && old.equals(now)) {
            return; // even the places are the same
        }
        List<FieldChange> differences = fields.differences(old, now);
        if (!differences.isEmpty() || !oldId.equals(newId)) {
            changes.add(new EntryChange.Altered(before.subject(section, oldId), after.subject(section, newId), differences));
        }
    }

    /** The order of those entries that both catalogues have. */
    private void order(Section section, Map<String, String> same) {
        List<String> old = before.contents().orders().getOrDefault(section, List.of()).stream().filter(same::containsKey).toList();
        List<String> now = after.contents().orders().getOrDefault(section, List.of()).stream().filter(same::containsValue).toList();
        if (!old.stream().map(same::get).toList().equals(now)) {
            Subject subject = new Subject(section, "", Optional.empty());
            changes.add(new EntryChange.Altered(subject, subject, List.of(new FieldChange(new Field("order"),
                    Optional.of(new Said.Texts(old)), Optional.of(new Said.Texts(now)), List.of()))));
        }
    }

    private List<Kinship> kinships() {
        Map<String, String> coins = became.get(Section.COINS);
        Map<String, String> types = became.get(Section.TYPES);
        Splits splits = new Splits(before.contents(), after.contents(), coins, types);
        Splits joins = new Splits(after.contents(), before.contents(), inverse(coins), inverse(types));
        List<Kinship> all = new ArrayList<>();
        splits.coins().forEach((from, into) -> all.add(split(Section.COINS, from, into)));
        joins.coins().forEach((into, from) -> all.add(joined(Section.COINS, from, into)));
        splits.types().forEach((from, into) -> all.add(split(Section.TYPES, from, into)));
        joins.types().forEach((into, from) -> all.add(joined(Section.TYPES, from, into)));
        all.addAll(Exchanges.among(changes));
        return all;
    }

    private Kinship split(Section section, String from, SortedSet<String> into) {
        return new Kinship.Split(before.subject(section, from), into.stream().map(id -> after.subject(section, id)).toList());
    }

    private Kinship joined(Section section, SortedSet<String> from, String into) {
        return new Kinship.Joined(from.stream().map(id -> before.subject(section, id)).toList(), after.subject(section, into));
    }

    private static Map<String, String> inverse(Map<String, String> map) {
        Map<String, String> inverse = new LinkedHashMap<>();
        map.forEach((from, to) -> inverse.put(to, from));
        return inverse;
    }
}
