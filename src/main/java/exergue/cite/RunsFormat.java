package exergue.cite;

import de.undercouch.citeproc.csl.internal.RenderContext;
import de.undercouch.citeproc.csl.internal.SBibliography;
import de.undercouch.citeproc.csl.internal.TokenBuffer;
import de.undercouch.citeproc.csl.internal.behavior.FormattingAttributes;
import de.undercouch.citeproc.csl.internal.format.BaseFormat;
import de.undercouch.citeproc.csl.internal.token.DisplayGroupToken;
import de.undercouch.citeproc.output.Bibliography;
import exergue.model.Inline;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What the library sets, as runs of the model, by the id of the work. Italic and bold are kept. Small capitals are set as
 * plain letters, because the book has none that are real; so are raised and lowered figures. Nothing is ever markup.
 */
final class RunsFormat extends BaseFormat {

    private final Map<String, List<Inline>> set = new LinkedHashMap<>();

    Map<String, List<Inline>> set() {
        return set;
    }

    @Override
    public String getName() {
        return "runs";
    }

    @Override
    protected String doFormatCitation(TokenBuffer buffer, RenderContext context) {
        return format(buffer);
    }

    @Override
    protected String doFormatBibliographyEntry(TokenBuffer buffer, RenderContext context, int index) {
        String marked = format(buffer).strip();
        set.put(context.getItemData().getId(), Markers.runs(marked));
        return marked;
    }

    @Override
    protected String doFormatLink(String text, String uri) {
        return text;
    }

    @Override
    public Bibliography makeBibliography(String[] entries, SBibliography bibliography) {
        return new Bibliography(entries);
    }

    @Override
    protected String openFontStyle(int style) {
        return style == FormattingAttributes.FS_NORMAL ? "" : Markers.ITALIC;
    }

    @Override
    protected String closeFontStyle(int style) {
        return style == FormattingAttributes.FS_NORMAL ? "" : Markers.ITALIC_END;
    }

    @Override
    protected String openFontWeight(int weight) {
        return weight == FormattingAttributes.FW_BOLD ? Markers.BOLD : "";
    }

    @Override
    protected String closeFontWeight(int weight) {
        return weight == FormattingAttributes.FW_BOLD ? Markers.BOLD_END : "";
    }

    /** Left margins (the number of a work) and what stands beside them follow each other on one line. */
    @Override
    protected String closeDisplayGroup(DisplayGroupToken.Type type) {
        return " ";
    }
}
