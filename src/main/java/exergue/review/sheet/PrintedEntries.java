package exergue.review.sheet;

import exergue.edition.Book;
import exergue.edition.Editor;
import exergue.edition.EntryBlock;
import exergue.edition.Anchors;
import exergue.edition.PageMap;
import exergue.edition.Part;
import exergue.edition.Specimen;
import exergue.model.Catalogue;
import exergue.model.Inline;
import exergue.model.Prose;
import exergue.review.change.Subject;
import exergue.review.content.Section;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the book prints of each coin and type, line by line. */
final class PrintedEntries {

    private final Map<String, Map<String, String>> coins = new HashMap<>();
    private final Map<String, Map<String, String>> types = new HashMap<>();

    private PrintedEntries() { }

    static PrintedEntries of(Catalogue catalogue) {
        PrintedEntries printed = new PrintedEntries();
        Book book = Editor.edit(catalogue, Map.of(), PageMap.UNKNOWN).book();
        Stream.of(book.front(), book.body(), book.back()).flatMap(List::stream).filter(Part.Entries.class::isInstance)
                .flatMap(part -> ((Part.Entries) part).blocks().stream()).filter(EntryBlock.Entry.class::isInstance)
                .forEach(block -> printed.take((EntryBlock.Entry) block));
        return printed;
    }

    /** Lines by what they are; empty for what the book does not print, or not as an entry. */
    Map<String, String> of(Subject subject) {
        if (subject.section().equals(Section.COINS)) {
            return coins.getOrDefault(Anchors.coin(subject.id()), Map.of());
        }
        return subject.section().equals(Section.TYPES) ? types.getOrDefault(Anchors.type(subject.id()), Map.of()) : Map.of();
    }

    private void take(EntryBlock.Entry entry) {
        Map<String, String> lines = new LinkedHashMap<>();
        put("Under", entry.runningHead(), lines);
        put("Numbers", entry.numbers(), lines);
        put("Heading", String.join(", ", entry.firstLine()), lines);
        entry.sides().forEach(side -> put(side.label(),
                Stream.of(side.legend().orElse(""), Inline.plain(side.description())).filter(text -> !text.isEmpty())
                        .collect(Collectors.joining(", ")), lines));
        put("References", references(entry.references()), lines);
        put("Note", notes(entry.notes()), lines);
        types.put(entry.id(), lines);
        entry.specimens().forEach(specimen -> coins.put(specimen.id(), lines(specimen, entry)));
    }

    private static Map<String, String> lines(Specimen specimen, EntryBlock.Entry entry) {
        Map<String, String> lines = new LinkedHashMap<>();
        put("Type", entry.runningHead() + "; " + String.join(", ", entry.firstLine()), lines);
        put("No.", specimen.number(), lines);
        put("Measured", specimen.line(), lines);
        put("Dies", specimen.dies(), lines);
        put("Remarks", Inline.plain(specimen.text()), lines);
        put("Note", notes(specimen.notes()), lines);
        put("Plate", specimen.plate(), lines);
        return lines;
    }

    private static void put(String label, String text, Map<String, String> into) {
        if (!text.isBlank()) {
            into.put(label, text);
        }
    }

    private static String references(List<EntryBlock.ReferenceText> references) {
        return references.stream().map(reference -> Stream.of(reference.relation(), reference.sign(), reference.number())
                .filter(text -> !text.isEmpty()).collect(Collectors.joining(" "))).collect(Collectors.joining("; "));
    }

    private static String notes(List<Prose> blocks) {
        return blocks.stream().filter(Prose.Paragraph.class::isInstance)
                .map(block -> Inline.plain(((Prose.Paragraph) block).runs())).collect(Collectors.joining(" "));
    }
}
