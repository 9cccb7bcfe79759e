package exergue.edition;

import exergue.model.BookWord;
import exergue.model.Caption;
import exergue.model.Prose;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Numbers the captioned tables and figures in the order of the book, each kind from 1. */
final class CaptionNumbers {

    private final BookWords words;
    private final Map<Caption.Kind, Integer> last = new EnumMap<>(Caption.Kind.class);
    private final List<Caption> numbered = new ArrayList<>();
    private final ProseMapper mapper = new ProseMapper(run -> run, this::number);

    CaptionNumbers(BookWords words) {
        this.words = words;
    }

    /** The blocks that come next in the book, their captions numbered. */
    List<Prose> in(List<Prose> blocks) {
        return mapper.blocks(blocks);
    }

    /** All so far, in order. */
    List<Caption> all() {
        return List.copyOf(numbered);
    }

    private Caption number(Caption caption) {
        int number = last.merge(caption.kind(), 1, Integer::sum);
        String word = words.of(caption.kind() == Caption.Kind.TABLE ? BookWord.TABLE : BookWord.FIGURE);
        Caption its = caption.numbered(new Caption.Label(number, Anchors.caption(caption, number), word + "\u00A0" + number));
        numbered.add(its);
        return its;
    }
}
