package exergue.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.model.Inline;
import exergue.model.Inline.Emphasis;
import exergue.model.Inline.Link;
import exergue.model.Inline.Strong;
import exergue.model.Inline.Words;
import java.util.List;
import org.junit.jupiter.api.Test;

class MarkupTest {

    private static String html(Inline... runs) {
        return new Markup(new FootOfPage()).of(List.of(runs));
    }

    private static Inline italic(String text) {
        return new Emphasis(List.of(new Words(text)));
    }

    @Test
    void escapesEverything() {
        assertEquals("a &lt;b&gt; &amp; &quot;c&quot;", html(new Words("a <b> & \"c\"")));
    }

    @Test
    void setsAStopAfterAnItalicWordInItalic() {
        assertEquals("<span>the </span><i>Corpus,</i><span> vol. 2</span>", html(new Words("the "), italic("Corpus"), new Words(", vol. 2")));
    }

    @Test
    void setsBracketsThatTouchAnItalicWordInItalic() {
        assertEquals("<span>see </span><i>(Journal of)</i><span> it</span>",
                html(new Words("see ("), italic("Journal of"), new Words(") it")));
    }

    @Test
    void leavesLettersThatTouchAnItalicWordUpright() {
        assertEquals("<i>Corpus</i><span>-like, </span><i>Journal</i><span>’s</span>",
                html(italic("Corpus"), new Words("-like, "), italic("Journal"), new Words("’s")));
    }

    @Test
    void joinsWordsThatCameInPieces() {
        assertEquals("Museum’s", html(new Words("Museum"), new Words("’"), new Words("s")));
    }

    @Test
    void turnsItalicWithinItalicUpright() {
        assertEquals("<i>the </i><span>Corpus</span><i> of</i>",
                html(new Emphasis(List.of(new Words("the "), italic("Corpus"), new Words(" of")))));
    }

    @Test
    void linksOnlyWhereAReaderCanFollow() {
        assertEquals("<a href=\"https://example.org/\">here</a><span> there</span>",
                html(new Link("https://example.org/", List.of(new Words("here"))), new Words(" "),
                        new Link("file:///etc/passwd", List.of(new Words("there")))));
    }

    @Test
    void setsStrongAndEmphasisTogether() {
        assertEquals("<b><i>x</i></b>", html(new Strong(List.of(italic("x")))));
    }
}
