package exergue.typeset;

import java.util.ArrayList;
import java.util.List;

/** Writes pieces of text with their elements one after the other, and boxes every word that several elements share. */
final class MarkupLine {

    private record Piece(String text, String open, String close) { }

    private static final Piece NONE = new Piece("", "", "");

    private final StringBuilder html = new StringBuilder();
    private final List<Piece> word = new ArrayList<>();
    private Piece current = NONE;

    /** Whole words of a piece go out at once; its last, unfinished word waits for what follows it. */
    void add(String text, String open, String close) {
        int first = text.indexOf(' ');
        if (first < 0) {
            hold(text, open, close);
            return;
        }
        int last = text.lastIndexOf(' ');
        int from = 0;
        if (!word.isEmpty()) {
            hold(text.substring(0, first), open, close);
            closeWord();
            from = first;
        }
        write(new Piece(text.substring(from, last + 1), open, close));
        hold(text.substring(last + 1), open, close);
    }

    void lineBreak() {
        closeWord();
        switchTo(NONE);
        html.append("<br/>");
    }

    String html() {
        closeWord();
        switchTo(NONE);
        return html.toString();
    }

    private void hold(String text, String open, String close) {
        if (!text.isEmpty()) {
            word.add(new Piece(text, open, close));
        }
    }

    private void closeWord() {
        boolean shared = word.stream().map(Piece::open).distinct().count() > 1;
        if (shared) {
            switchTo(NONE);
            html.append("<span class=\"w\">");
        }
        word.forEach(this::write);
        if (shared) {
            switchTo(NONE);
            html.append("</span>");
        }
        word.clear();
    }

    private void write(Piece piece) {
        switchTo(piece);
        html.append(Markup.escape(piece.text()));
    }

    private void switchTo(Piece next) {
        if (!current.open().equals(next.open())) {
            html.append(current.close()).append(next.open());
        }
        current = next;
    }
}
