package exergue.typeset;

import exergue.model.Inline;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Runs of prose to XHTML. Every letter is escaped here; no markup of the author's can pass.
 *
 * <p>Two habits of the engine are met. It may break a line wherever an element begins or ends, so that the comma after
 * an italic word could open a line: marks that touch an italic word are set in italic with it. And it writes the bare
 * text of a line before the text of the elements in it, so that a line copied out of the PDF would be out of order:
 * where a line has both, its bare text is put in {@code span}.
 */
final class Markup {

    /** Letters of one look. */
    private record Look(boolean italic, boolean strong, String address) {

        static final Look PLAIN = new Look(false, false, "");

        String open(boolean mixed) {
            if (equals(PLAIN)) {
                return mixed ? "<span>" : "";
            }
            return (address.isEmpty() ? "" : "<a href=\"" + escape(address) + "\">")
                    + (strong ? "<b>" : "") + (italic ? "<i>" : "");
        }

        String close(boolean mixed) {
            if (equals(PLAIN)) {
                return mixed ? "</span>" : "";
            }
            return (italic ? "</i>" : "") + (strong ? "</b>" : "") + (address.isEmpty() ? "" : "</a>");
        }
    }

    /** @param notes called at the end of the text */
    private record Piece(String text, Look look, List<Inline.Footnote> notes) {

        Piece(String text, Look look) {
            this(text, look, List.of());
        }

        /** Some of its text. */
        String html(String some, boolean mixed) {
            return some.isEmpty() ? "" : look.open(mixed) + escape(some) + look.close(mixed);
        }

        Piece and(Piece next) {
            String apart = notes.isEmpty() || next.notes.isEmpty() || text.isEmpty() ? "" : BETWEEN_CALLS;
            return new Piece(text + apart + next.text, look, join(notes, next.notes));
        }
    }

    private static final Piece LINE_BREAK = new Piece("\n", Look.PLAIN);
    private static final String BETWEEN_CALLS = "\u202F";

    private final FootnoteMarkup footnotes;

    Markup(FootnoteMarkup footnotes) {
        this.footnotes = footnotes;
    }

    /** The notes called since they were last taken, if they are to be set together. */
    List<Map<String, Object>> takeFootnotes() {
        return footnotes.take();
    }

    String of(List<Inline> runs) {
        List<Piece> pieces = new ArrayList<>();
        flatten(runs, Look.PLAIN, pieces);
        pieces = joined(pieces);
        drawMarksIn(pieces);
        drawToCalls(pieces);
        boolean mixed = pieces.stream().anyMatch(piece -> !piece.look().equals(Look.PLAIN) || !piece.notes().isEmpty());
        StringBuilder html = new StringBuilder();
        for (Piece piece : pieces) {
            if (piece == LINE_BREAK) {
                html.append("<br/>");
            } else if (piece.notes().isEmpty()) {
                html.append(piece.html(piece.text(), mixed));
            } else {
                int word = piece.text().lastIndexOf(' ') + 1;
                html.append(piece.html(piece.text().substring(0, word), mixed));
                String calling = piece.html(piece.text().substring(word), mixed);
                for (Inline.Footnote note : piece.notes()) {
                    calling = calling.isEmpty() ? "" : footnotes.calling(note, calling, note != piece.notes().get(0) || !piece.look().address().isEmpty());
                }
                html.append(calling);
            }
            piece.notes().forEach(note -> html.append(footnotes.element(note, this::of)));
        }
        return html.toString();
    }

    private void flatten(List<Inline> runs, Look look, List<Piece> into) {
        for (Inline run : runs) {
            if (run instanceof Inline.Words words) {
                into.add(new Piece(words.text(), look));
            } else if (run instanceof Inline.Emphasis emphasis) {
                flatten(emphasis.runs(), new Look(!look.italic(), look.strong(), look.address()), into);
            } else if (run instanceof Inline.Strong strong) {
                flatten(strong.runs(), new Look(look.italic(), true, look.address()), into);
            } else if (run instanceof Inline.Link link) {
                flatten(link.runs(), new Look(look.italic(), look.strong(), safe(link.address())), into);
            } else if (run instanceof Inline.CrossReference reference) {
                into.add(new Piece(reference.id(), look));
            } else if (run instanceof Inline.LineBreak) {
                into.add(LINE_BREAK);
            } else if (run instanceof Inline.Footnote note) {
                into.add(new Piece(footnotes.letters(note.number()), look, List.of(note)));
            }
        }
    }

    /** Only addresses that a reader can follow in print or on a screen; any other link prints as its words. */
    private static String safe(String address) {
        boolean known = address.startsWith("#") || address.startsWith("https://") || address.startsWith("http://")
                || address.startsWith("mailto:");
        return known && !address.contains(" ") ? address : "";
    }

    private static List<Piece> joined(List<Piece> pieces) {
        List<Piece> joined = new ArrayList<>();
        for (Piece piece : pieces) {
            Piece last = joined.isEmpty() ? LINE_BREAK : joined.get(joined.size() - 1);
            boolean call = !piece.notes().isEmpty();
            boolean same = last.notes().isEmpty() && last.look().equals(piece.look());
            if (piece != LINE_BREAK && last != LINE_BREAK && (call || same)) {
                joined.set(joined.size() - 1, last.and(piece));
            } else {
                joined.add(piece);
            }
        }
        return joined;
    }

    private static void drawMarksIn(List<Piece> pieces) {
        for (int i = 0; i < pieces.size(); i++) {
            if (!pieces.get(i).look().italic() || !pieces.get(i).look().address().isEmpty()) {
                continue;
            }
            if (i > 0 && pieces.get(i - 1) != LINE_BREAK && pieces.get(i - 1).notes().isEmpty()) {
                String before = pieces.get(i - 1).text();
                move(pieces, i - 1, before.substring(0, before.length() - marksAtEnd(before)), i,
                        before.substring(before.length() - marksAtEnd(before)) + pieces.get(i).text());
            }
            if (i + 1 < pieces.size() && pieces.get(i + 1) != LINE_BREAK && pieces.get(i).notes().isEmpty()) {
                String after = pieces.get(i + 1).text();
                move(pieces, i + 1, after.substring(marksAtStart(after)), i,
                        pieces.get(i).text() + after.substring(0, marksAtStart(after)));
            }
        }
    }

    /** What touches the figure of a call, mostly a comma, stays on its line: the note's element comes after it. */
    private void drawToCalls(List<Piece> pieces) {
        for (int i = 0; i + 1 < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            Piece next = pieces.get(i + 1);
            if (piece.notes().isEmpty() || next == LINE_BREAK || footnotes.letters(piece.notes().get(0).number()).isEmpty()) {
                continue;
            }
            int space = next.text().indexOf(' ');
            if (space >= 0) {
                move(pieces, i + 1, next.text().substring(space), i, piece.text() + next.text().substring(0, space));
            } else {
                pieces.set(i, new Piece(piece.text() + next.text(), piece.look(), join(piece.notes(), next.notes())));
                pieces.remove(i + 1);
                i--;
            }
        }
    }

    private static List<Inline.Footnote> join(List<Inline.Footnote> notes, List<Inline.Footnote> more) {
        List<Inline.Footnote> both = new ArrayList<>(notes);
        both.addAll(more);
        return List.copyOf(both);
    }

    private static void move(List<Piece> pieces, int from, String left, int to, String drawn) {
        pieces.set(from, new Piece(left, pieces.get(from).look(), pieces.get(from).notes()));
        pieces.set(to, new Piece(drawn, pieces.get(to).look(), pieces.get(to).notes()));
    }

    /** How many marks the text begins with, if a space or its end follows them. */
    private static int marksAtStart(String text) {
        int marks = 0;
        while (marks < text.length() && isMark(text.charAt(marks))) {
            marks++;
        }
        return marks == text.length() || text.charAt(marks) == ' ' ? marks : 0;
    }

    private static int marksAtEnd(String text) {
        int marks = 0;
        while (marks < text.length() && isMark(text.charAt(text.length() - 1 - marks))) {
            marks++;
        }
        return marks == text.length() || text.charAt(text.length() - 1 - marks) == ' ' ? marks : 0;
    }

    private static boolean isMark(char letter) {
        return letter != ' ' && !Character.isLetterOrDigit(letter) && !Character.isWhitespace(letter);
    }

    static String escape(String text) {
        StringBuilder safe = new StringBuilder(text.length() + 16);
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            switch (letter) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                default -> safe.append(letter < ' ' && letter != '\n' && letter != '\t' ? ' ' : letter);
            }
        }
        return safe.toString();
    }
}
