package exergue.source.markdown;

import exergue.finding.NearMiss;
import exergue.finding.Place;
import exergue.model.Inline;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.commonmark.ext.footnotes.FootnoteDefinition;
import org.commonmark.node.Node;

/** The footnotes of one chapter: their texts by label, numbered in the order in which they are called. */
final class Footnotes implements FootnoteCalls {

    private final Manuscript manuscript;
    private final Function<Node, List<Inline>> reader;
    private final Map<String, FootnoteDefinition> texts = new LinkedHashMap<>();
    private final Set<String> called = new LinkedHashSet<>();
    private int numbered;

    /** @param reader reads the text of one note */
    Footnotes(Node chapter, Manuscript manuscript, Function<Node, List<Inline>> reader) {
        this.manuscript = manuscript;
        this.reader = reader;
        collect(chapter);
    }

    private void collect(Node parent) {
        for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
            if (!(node instanceof FootnoteDefinition text)) {
                collect(node);
            } else if (texts.putIfAbsent(key(text.getLabel()), text) != null) {
                manuscript.report(MarkdownCodes.FOOTNOTE_NEVER_CALLED, place(text),
                        "“[^" + text.getLabel() + "]:” stands here a second time, and only the first text is printed.",
                        "Give this text a label of its own, and call it where it belongs.");
            }
        }
    }

    @Override
    public Optional<Inline.Footnote> at(String label, Place place) {
        FootnoteDefinition text = texts.get(key(label));
        if (text == null) {
            manuscript.report(MarkdownCodes.FOOTNOTE_WITHOUT_TEXT, place, "“[^" + label + "]” calls a footnote that has no text.",
                    NearMiss.of(label, texts.keySet()).map(near -> "Did you mean “[^" + near + "]”?").orElse(
                            "Write its text in a paragraph of its own, such as “[^" + label + "]: The text of the note.”"));
            return Optional.empty();
        }
        if (!called.add(key(label))) {
            manuscript.report(MarkdownCodes.FOOTNOTE_CALLED_TWICE, place,
                    "“[^" + label + "]” is called here again, and would be printed twice.",
                    "Give the second call a note of its own, such as “See the note above.”");
            return Optional.empty();
        }
        numbered++;
        return Optional.of(new Inline.Footnote(numbered, reader.apply(text), place));
    }

    /** To be asked after all of the chapter has been read. */
    void reportNeverCalled() {
        texts.forEach((key, text) -> {
            if (!called.contains(key)) {
                manuscript.report(MarkdownCodes.FOOTNOTE_NEVER_CALLED, place(text),
                        "The footnote “[^" + text.getLabel() + "]” is never called, and is not printed.",
                        "Write [^" + text.getLabel() + "] where its number shall stand, or take the note away.");
            }
        });
    }

    private Place place(Node node) {
        return InlineReader.place(node, manuscript);
    }

    /** Markdown does not tell capitals from small letters in labels. */
    private static String key(String label) {
        return label.strip().toLowerCase(Locale.ROOT);
    }
}
