package exergue.typeset;

import exergue.model.Inline;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** How the call of a footnote and its text are written. */
interface FootnoteMarkup {

    /** What is set as letters of the word that calls the note; empty if the call is an element of its own. */
    String letters(int number);

    /** What follows the word that calls the note. @param runs finishes the text of the note */
    String element(Inline.Footnote note, Function<List<Inline>, String> runs);

    /** The notes since they were last taken, if they are to be set together; {@code number}, {@code anchor}, {@code text}, {@code call}. */
    List<Map<String, Object>> take();
}
