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

    @Override
    public String element(Inline.Footnote note, Function<List<Inline>, String> runs) {
        return "<span class=\"footnote\"><span class=\"hung\">" + note.number() + "</span><span>"
                + runs.apply(note.runs()) + "</span></span>";
    }

    @Override
    public List<Map<String, Object>> take() {
        return List.of();
    }
}
