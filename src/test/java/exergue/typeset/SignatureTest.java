package exergue.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.model.Inline;
import exergue.model.Prose;
import java.util.List;
import org.junit.jupiter.api.Test;

class SignatureTest {

    private static final Prose TEXT = paragraph(new Inline.Words("The faults that remain are mine."));
    private static final Prose NAME = paragraph(new Inline.Emphasis(SampleBook.words("J. C.")));

    private static Prose paragraph(Inline run) {
        return new Prose.Paragraph(List.of(run), SampleBook.PLACE);
    }

    private static String html(Prose... blocks) {
        return new ProseMarkup(new Marks(), new Markup(new FootOfPage()), Hyphens.of("en"), SampleBook.tree(), finding -> { }).of(List.of(blocks), 1);
    }

    private static boolean isSigned(Prose... blocks) {
        return html(blocks).contains("<p class=\"signed\"><i>J. C.</i></p>");
    }

    @Test
    void aFewWordsInItalicsAfterTheTextAreWhoWroteIt() {
        assertEquals(true, isSigned(TEXT, NAME));
    }

    @Test
    void notBeforeTheEndNorAlone() {
        assertEquals(false, isSigned(TEXT, NAME, TEXT));
        assertEquals(false, isSigned(NAME));
    }

    @Test
    void notASentence() {
        assertEquals(false, html(TEXT, paragraph(new Inline.Emphasis(SampleBook.words(
                "What is wrong with all of this is for others to say.")))).contains("signed"));
    }
}
