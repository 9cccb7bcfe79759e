package exergue.typeset;

import exergue.model.Inline;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** How the call of a footnote and its text are written. */
interface FootnoteMarkup {

    /** What is set as letters of the word that calls the note; empty if the call is an element of its own. */
    String letters(int number);

    /** The word that calls a note, finished. @param html of the word, with the figure; @param linked whether it is a link already */
    String calling(Inline.Footnote note, String html, boolean linked);

    /** What follows the word that calls the note. @param runs finishes the text of the note */
    String element(Inline.Footnote note, Function<List<Inline>, String> runs);

    /** Names a note, or its call, in the whole book: chapters count their notes from 1 each. @param what "note", "call" */
    static String anchor(String what, Inline.Footnote note) {
        return what + "." + note.place().file().replaceAll("[^\\p{L}\\p{N}]+", "-") + "." + note.number();
    }

    /** The notes since they were last taken, if they are to be set together; {@code number}, {@code anchor}, {@code text}, {@code call}. */
    List<Map<String, Object>> take();
}
