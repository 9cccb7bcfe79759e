package exergue.edition;

import exergue.model.BookWord;
import exergue.model.Caption;
import exergue.model.Inline;
import exergue.model.Language;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The lists of plates, tables and figures: of those that the book has. */
final class BookLists {

    private final BookWords words;
    private final List<Part.ListedThings> lists = new ArrayList<>();

    BookLists(BookWords words, List<Plate> plates, List<Caption> captions) {
        this.words = words;
        add(BookWord.PLATES, plates.stream().map(plate -> new Part.Listed(plate.id(), plate.heading(), words(plate.caption()))).toList());
        add(BookWord.TABLES, of(Caption.Kind.TABLE, captions));
        add(BookWord.FIGURES, of(Caption.Kind.FIGURE, captions));
    }

    /** Nothing if the book has none of them. */
    Optional<Part> part(String id) {
        return lists.isEmpty() ? Optional.empty() : Optional.of(new Part.Lists(id, words(heading()), lists));
    }

    private void add(BookWord heading, List<Part.Listed> things) {
        if (!things.isEmpty()) {
            lists.add(new Part.ListedThings(words.of(heading), things));
        }
    }

    /** "Plates, tables and figures" */
    private String heading() {
        StringBuilder heading = new StringBuilder(lists.get(0).heading());
        for (int i = 1; i < lists.size(); i++) {
            heading.append(i == lists.size() - 1 ? " " + words.of(BookWord.AND) + " " : ", ").append(within(lists.get(i).heading()));
        }
        return heading.toString();
    }

    private String within(String noun) {
        return words.language() == Language.GERMAN ? noun : noun.toLowerCase(Locale.ROOT);
    }

    private static List<Part.Listed> of(Caption.Kind kind, List<Caption> captions) {
        List<Part.Listed> listed = new ArrayList<>();
        for (Caption caption : captions) {
            if (caption.kind() == kind) {
                caption.label().ifPresent(label -> listed.add(new Part.Listed(label.anchor(), label.words(), withoutStop(unlinked(caption.runs())))));
            }
        }
        return listed;
    }

    /** Leaders follow the words. */
    private static List<Inline> withoutStop(List<Inline> runs) {
        if (runs.isEmpty() || !(runs.get(runs.size() - 1) instanceof Inline.Words last) || !last.text().endsWith(".")) {
            return runs;
        }
        List<Inline> without = new ArrayList<>(runs.subList(0, runs.size() - 1));
        without.add(new Inline.Words(last.text().substring(0, last.text().length() - 1)));
        return without;
    }

    /** A line of the list is a link itself, and its notes stand where the table or figure is. */
    private static List<Inline> unlinked(List<Inline> runs) {
        List<Inline> plain = new ArrayList<>();
        for (Inline run : runs) {
            if (run instanceof Inline.Link link) {
                plain.addAll(unlinked(link.runs()));
            } else if (run instanceof Inline.Emphasis emphasis) {
                plain.add(new Inline.Emphasis(unlinked(emphasis.runs())));
            } else if (run instanceof Inline.Strong strong) {
                plain.add(new Inline.Strong(unlinked(strong.runs())));
            } else if (run instanceof Inline.LineBreak) {
                plain.add(new Inline.Words(" "));
            } else if (!(run instanceof Inline.Footnote)) {
                plain.add(run);
            }
        }
        return plain;
    }

    private static List<Inline> words(String text) {
        return List.of(new Inline.Words(text));
    }
}
