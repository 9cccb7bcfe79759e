package exergue.typeset;

import exergue.model.Inline;
import java.util.ArrayList;
import java.util.List;

/**
 * Runs of prose to XHTML. Every letter is escaped here; no markup of the author's can pass.
 *
 * <p>The engine may break a line wherever an element begins or ends, so that the comma after an italic word could
 * open a line. A comma or full stop after an italic word is therefore set in italic with it, as printers do anyway;
 * any other word that several elements share is put in a box of its own ({@code class="w"}).
 *
 * <p>The engine also writes the bare text of a line before the text of the elements in it, so that a line copied out
 * of the PDF would be out of order. Where a line has both, its bare text is put in {@code span}.
 */
final class Markup {

    /** Letters of one look. */
    private record Look(boolean italic, boolean strong, String address, boolean span) {

        static final Look PLAIN = new Look(false, false, "", false);

        Look inSpan() {
            return new Look(italic, strong, address, !italic && !strong && address.isEmpty());
        }

        String open() {
            return (span ? "<span>" : "") + (address.isEmpty() ? "" : "<a href=\"" + escape(address) + "\">")
                    + (strong ? "<b>" : "") + (italic ? "<i>" : "");
        }

        String close() {
            return (italic ? "</i>" : "") + (strong ? "</b>" : "") + (address.isEmpty() ? "" : "</a>")
                    + (span ? "</span>" : "");
        }
    }

    private record Piece(String text, Look look) { }

    private static final Piece LINE_BREAK = new Piece("\n", Look.PLAIN);

    String of(List<Inline> runs) {
        List<Piece> pieces = new ArrayList<>();
        flatten(runs, Look.PLAIN, pieces);
        drawStopsIn(pieces);
        boolean mixed = pieces.stream().anyMatch(piece -> !piece.look().equals(Look.PLAIN));
        if (mixed) {
            pieces.replaceAll(piece -> piece == LINE_BREAK ? piece : new Piece(piece.text(), piece.look().inSpan()));
        }
        MarkupLine line = new MarkupLine();
        for (Piece piece : pieces) {
            if (piece == LINE_BREAK) {
                line.lineBreak();
            } else {
                line.add(piece.text(), piece.look().open(), piece.look().close());
            }
        }
        return line.html();
    }

    private static void drawStopsIn(List<Piece> pieces) {
        for (int i = 1; i < pieces.size(); i++) {
            Piece before = pieces.get(i - 1);
            String text = pieces.get(i).text();
            boolean stop = !text.isEmpty() && ",.;:".indexOf(text.charAt(0)) >= 0
                    && (text.length() == 1 || text.charAt(1) == ' ');
            if (stop && before.look().italic() && before.look().address().isEmpty()) {
                pieces.set(i - 1, new Piece(before.text() + text.charAt(0), before.look()));
                pieces.set(i, new Piece(text.substring(1), pieces.get(i).look()));
            }
        }
    }

    private static void flatten(List<Inline> runs, Look look, List<Piece> into) {
        for (Inline run : runs) {
            if (run instanceof Inline.Words words) {
                into.add(new Piece(words.text(), look));
            } else if (run instanceof Inline.Emphasis emphasis) {
                flatten(emphasis.runs(), new Look(!look.italic(), look.strong(), look.address(), false), into);
            } else if (run instanceof Inline.Strong strong) {
                flatten(strong.runs(), new Look(look.italic(), true, look.address(), false), into);
            } else if (run instanceof Inline.Link link) {
                flatten(link.runs(), new Look(look.italic(), look.strong(), safe(link.address()), false), into);
            } else if (run instanceof Inline.CrossReference reference) {
                into.add(new Piece(reference.id(), look));
            } else if (run instanceof Inline.LineBreak) {
                into.add(LINE_BREAK);
            }
        }
    }

    /** Only addresses that a reader can follow in print or on a screen; any other link prints as its words. */
    private static String safe(String address) {
        boolean known = address.startsWith("#") || address.startsWith("https://") || address.startsWith("http://")
                || address.startsWith("mailto:");
        return known && !address.contains(" ") ? address : "";
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
