package exergue.typeset;

import exergue.model.Inline;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Notes for a browser, whose pages have no foot: after the text, with a link there and one back. */
final class EndOfPart implements FootnoteMarkup {

    private final List<Map<String, Object>> notes = new ArrayList<>();

    @Override
    public String letters(int number) {
        return "";
    }

    @Override
    public String calling(Inline.Footnote note, String html, boolean linked) {
        return html;
    }

    @Override
    public String element(Inline.Footnote note, Function<List<Inline>, String> runs) {
        String anchor = FootnoteMarkup.anchor("note", note);
        String call = FootnoteMarkup.anchor("call", note);
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("number", note.number());
        values.put("anchor", anchor);
        values.put("text", BookValues.finished(runs.apply(note.runs())));
        values.put("call", Map.of("anchor", call));
        notes.add(values);
        return "<sup><a class=\"call\" role=\"doc-noteref\" id=\"" + Markup.escape(call) + "\" href=\"#" + Markup.escape(anchor) + "\">"
                + note.number() + "</a></sup>";
    }

    @Override
    public List<Map<String, Object>> take() {
        List<Map<String, Object>> taken = List.copyOf(notes);
        notes.clear();
        return taken;
    }
}
