package exergue.edition;

import exergue.edition.methods.ComparisonTable;
import exergue.edition.methods.MethodsTopic;
import exergue.edition.methods.Passage;
import exergue.edition.methods.Tally;
import exergue.finding.Place;
import exergue.model.Caption;
import exergue.model.Inline;
import exergue.model.Prose;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The methods statement on the page: one paragraph if it is short, paragraphs if not, with headings if it is long. */
final class MethodsLayout {

    /** A statement of so few sentences is one paragraph. */
    private static final int SHORT = 5;

    /** A longer statement than this is more than half a page, and nobody reads that without headings. */
    private static final int LONG = 16;

    /** Id of the table that compares the sources. No author can write it: ids do not begin with a full stop. */
    private static final String COMPARED = ".sources";

    private final Place place;

    /** @param place where the plan asks for the statement */
    MethodsLayout(Place place) {
        this.place = place;
    }

    List<Prose> blocks(List<MethodsTopic> topics, Tally tally) {
        List<Passage> all = topics.stream().flatMap(topic -> topic.passages(tally).stream()).toList();
        int length = all.stream().mapToInt(Passage::length).sum();
        if (length <= SHORT && all.stream().allMatch(Passage.Sentences.class::isInstance)) {
            return List.of(paragraph("", all.stream().map(Passage.Sentences.class::cast)
                    .flatMap(passage -> passage.sentences().stream()).toList()));
        }
        List<Prose> blocks = new ArrayList<>();
        for (MethodsTopic topic : topics) {
            List<Passage> passages = topic.passages(tally);
            if (length > LONG && !passages.isEmpty()) {
                blocks.add(new Prose.Heading(2, words(topic.heading()), place));
            }
            passages.forEach(passage -> add(passage, blocks));
        }
        return blocks;
    }

    private void add(Passage passage, List<Prose> blocks) {
        if (passage instanceof Passage.Sentences said) {
            blocks.add(paragraph(said.opening(), said.sentences()));
        } else if (passage instanceof Passage.Listing listing) {
            blocks.add(paragraph("", List.of(listing.lead())));
            List<List<Prose>> items = new ArrayList<>();
            listing.items().forEach(item -> items.add(List.of(paragraph("", List.of(item)))));
            blocks.add(new Prose.Items(false, 1, items, place));
        } else if (passage instanceof Passage.Table table) {
            blocks.add(table(table));
        }
    }

    private Prose paragraph(String opening, List<String> sentences) {
        List<Inline> runs = new ArrayList<>();
        if (!opening.isEmpty()) {
            runs.add(new Inline.Emphasis(words(opening)));
        }
        runs.addAll(numbered(String.join(" ", sentences)));
        return new Prose.Paragraph(List.copyOf(runs), place);
    }

    /** With a reference to the table in the place of its number. */
    private List<Inline> numbered(String sentences) {
        int at = sentences.indexOf(ComparisonTable.NUMBER);
        if (at < 0) {
            return words(sentences);
        }
        return List.of(new Inline.Words(sentences.substring(0, at)), new Inline.CrossReference("table", COMPARED, place),
                new Inline.Words(sentences.substring(at + ComparisonTable.NUMBER.length())));
    }

    private Prose table(Passage.Table table) {
        List<String> align = new ArrayList<>();
        table.heads().forEach(head -> align.add(align.isEmpty() ? "left" : "right"));
        List<List<List<Inline>>> rows = new ArrayList<>();
        table.rows().forEach(row -> rows.add(cells(row)));
        Caption caption = new Caption(Caption.Kind.TABLE, Optional.of(new Written<>(COMPARED, place)), words(table.caption() + "."),
                Optional.empty());
        return new Prose.Table(align, cells(table.heads()), rows, Optional.of(caption), place);
    }

    private static List<List<Inline>> cells(List<String> cells) {
        return cells.stream().map(MethodsLayout::words).toList();
    }

    private static List<Inline> words(String words) {
        return List.of(new Inline.Words(words));
    }
}
