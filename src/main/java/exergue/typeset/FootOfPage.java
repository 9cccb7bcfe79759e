package exergue.typeset;

import exergue.model.Inline;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Notes on the printed page. The number in the line is of superior figures and not an element, because the engine may
 * end a line where an element begins, and the number would open the next.
 */
final class FootOfPage implements FootnoteMarkup {

    private static final String SUPERIOR = "\u2070\u00B9\u00B2\u00B3\u2074\u2075\u2076\u2077\u2078\u2079";

    @Override
    public String letters(int number) {
        StringBuilder letters = new StringBuilder();
        String.valueOf(number).chars().forEach(figure -> letters.append(SUPERIOR.charAt(figure - '0')));
        return letters.toString();
    }

    /** The whole word is the link: an element ends where a line may, and that is at the end of the word. */
    @Override
    public String calling(Inline.Footnote note, String html, boolean linked) {
        String id = " id=\"" + Markup.escape(FootnoteMarkup.anchor("call", note)) + "\"";
        return linked ? "<span" + id + ">" + html + "</span>"
                : "<a" + id + " href=\"#" + Markup.escape(FootnoteMarkup.anchor("note", note)) + "\">" + html + "</a>";
    }

    @Override
    public String element(Inline.Footnote note, Function<List<Inline>, String> runs) {
        return "<span class=\"footnote\" id=\"" + Markup.escape(FootnoteMarkup.anchor("note", note)) + "\"><span class=\"hung\"><a href=\"#"
                + Markup.escape(FootnoteMarkup.anchor("call", note)) + "\">" + note.number() + "</a></span><span>" + runs.apply(note.runs()) + "</span></span>";
    }

    @Override
    public List<Map<String, Object>> take() {
        return List.of();
    }
}
