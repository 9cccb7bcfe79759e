package exergue.exchange.list;

import exergue.exchange.list.Draft.Field;
import exergue.model.Catalogue;
import exergue.source.list.ColumnContent;
import exergue.source.list.ListCodes;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What a row says besides readings, as fields of an entry. */
final class EntryFields {

    /** Where words go as they stand. */
    private static final Map<ColumnContent, String[]> PATHS = new LinkedHashMap<>();

    static {
        PATHS.put(ColumnContent.OBVERSE_DIE, new String[] {"dies", "obverse"});
        PATHS.put(ColumnContent.REVERSE_DIE, new String[] {"dies", "reverse"});
        PATHS.put(ColumnContent.OBVERSE_LEGEND, new String[] {"obverse", "legend"});
        PATHS.put(ColumnContent.OBVERSE_DESCRIPTION, new String[] {"obverse", "description"});
        PATHS.put(ColumnContent.REVERSE_LEGEND, new String[] {"reverse", "legend"});
        PATHS.put(ColumnContent.REVERSE_DESCRIPTION, new String[] {"reverse", "description"});
        PATHS.put(ColumnContent.INVENTORY_NUMBER, new String[] {"collection", "number"});
        PATHS.put(ColumnContent.FIND_CONTEXT, new String[] {"find", "context"});
        PATHS.put(ColumnContent.FIND_NUMBER, new String[] {"find", "number"});
        PATHS.put(ColumnContent.COUNTERMARK, new String[] {"countermark"});
        PATHS.put(ColumnContent.OBVERSE_PHOTOGRAPH, new String[] {"photograph", "obverse"});
        PATHS.put(ColumnContent.REVERSE_PHOTOGRAPH, new String[] {"photograph", "reverse"});
    }

    private final TypeFinder types;
    private final Names names;
    private final RowFindings findings;

    EntryFields(Catalogue catalogue, Names names, RowFindings findings) {
        this.types = new TypeFinder(catalogue, names, findings);
        this.names = names;
        this.findings = findings;
    }

    List<Field> of(SheetRow row, Map<ColumnContent, List<Taken>> taken) {
        List<Field> fields = new ArrayList<>();
        types.find(row, taken).ifPresent(type -> fields.add(Draft.field(type, EntryNode.words(type.text()), "type")));
        one(taken, ColumnContent.COLLECTION).ifPresent(said -> types.known(ColumnContent.COLLECTION, said)
                .ifPresent(id -> fields.add(Draft.field(said, EntryNode.words(id), "collection", "id"))));
        one(taken, ColumnContent.FIND_SPOT).ifPresent(said -> spot(said).ifPresent(id ->
                fields.add(Draft.field(said, EntryNode.words(id), "find", "spot"))));
        PATHS.forEach((content, path) -> one(taken, content).ifPresent(said ->
                fields.add(Draft.field(said, EntryNode.words(introduced(said, said.text())), path))));
        taken.getOrDefault(ColumnContent.PROVENANCE, List.of()).forEach(said -> split(said).forEach(words ->
                fields.add(member(said, EntryNode.words(introduced(said, words)), "provenance"))));
        taken.getOrDefault(ColumnContent.REFERENCE, List.of()).forEach(said -> split(said).forEach(number ->
                fields.add(member(said, reference(said, number), "references"))));
        taken.getOrDefault(ColumnContent.DAMAGE, List.of()).forEach(said -> split(said).forEach(word ->
                types.known(ColumnContent.DAMAGE, damage(said, word)).ifPresent(known ->
                        fields.add(member(said, EntryNode.words(known), "damage")))));
        note(taken.getOrDefault(ColumnContent.NOTE, List.of())).ifPresent(fields::add);
        return fields;
    }

    private static Optional<Taken> one(Map<ColumnContent, List<Taken>> taken, ColumnContent content) {
        return taken.getOrDefault(content, List.of()).stream().findFirst();
    }

    /** The words are not quoted: they may name the very place. */
    private Optional<String> spot(Taken said) {
        Optional<String> id = names.id(ColumnContent.FIND_SPOT, said.text());
        if (id.isEmpty()) {
            findings.add(ListCodes.UNKNOWN_WORD, said.spot(), said.text(), "The place in this cell is none of find-spots.yaml.",
                    "Give it an id and a coarse name there, keep what is exact under exact:, and say under the column which is which: "
                            + "words: {as in the list: id}. No exact place is ever written into the entry of a coin.");
        }
        return id;
    }

    private static Field member(Taken said, EntryNode node, String key) {
        return Draft.field(said, new EntryNode.Members(List.of(node)), key);
    }

    private static List<String> split(Taken said) {
        return said.said().text().splitAt().map(mark -> Stream.of(said.text().split(Pattern.quote(mark.value()))).map(String::strip)
                .filter(part -> !part.isEmpty()).toList()).orElse(List.of(said.text()));
    }

    private static EntryNode reference(Taken said, String number) {
        Map<String, EntryNode> keys = new LinkedHashMap<>();
        keys.put("work", EntryNode.words(said.said().cited().work().map(work -> work.value()).orElse("")));
        keys.put("number", EntryNode.words(introduced(said, number)));
        if (!said.said().cited().relation().value().equals("same type")) {
            keys.put("relation", EntryNode.words(said.said().cited().relation().value()));
        }
        return new EntryNode.Keys(keys);
    }

    /** A part of a cell, translated by itself. */
    private static Taken damage(Taken said, String word) {
        String known = said.said().text().words().containsKey(word) ? said.said().text().words().get(word).value() : word;
        return new Taken(known, said.spot(), said.said(), said.ofRow());
    }

    private static Optional<Field> note(List<Taken> notes) {
        if (notes.isEmpty()) {
            return Optional.empty();
        }
        String text = String.join("\n\n", notes.stream().map(note -> introduced(note, note.text())).toList());
        return Optional.of(Draft.field(new Taken(text, notes.get(0).spot(), notes.get(0).said(), notes.stream().anyMatch(Taken::ofRow)),
                EntryNode.words(text), "note"));
    }

    private static String introduced(Taken said, String words) {
        return said.said().text().introducedBy().map(before -> before.value() + " " + words).orElse(words);
    }
}
