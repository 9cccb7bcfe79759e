package exergue.edition;

import exergue.edition.EntryBlock.SideText;
import exergue.edition.methods.Passage;
import exergue.model.BookWord;
import exergue.model.Coin;
import exergue.model.Inline;
import exergue.model.Side;
import exergue.model.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Obverse and reverse as printed. */
record SideTexts(BookWords words, CrossReferences references) {

    List<SideText> of(Type type) {
        return both(type, new Sided(type.obverse(), List.of()), new Sided(type.reverse(), List.of()));
    }

    /** The coin's own legend in the place of the type's; what it has otherwise after the type's description. */
    List<SideText> of(Coin coin, Type type) {
        return both(type, merged(type.obverse(), coin.obverse()), merged(type.reverse(), coin.reverse()));
    }

    private Sided merged(Side type, Side coin) {
        Side whole = new Side(coin.legend().or(type::legend), type.retrograde() || coin.retrograde(), type.description());
        return new Sided(whole, coin.description().map(phrase -> references.inRuns(phrase.runs())).orElse(List.of()));
    }

    /** @param besides after the description */
    private record Sided(Side side, List<Inline> besides) { }

    private List<SideText> both(Type type, Sided obverse, Sided reverse) {
        List<SideText> sides = new ArrayList<>();
        side(words.of(BookWord.OBVERSE), obverse, type, sides);
        side(words.of(BookWord.REVERSE), reverse, type, sides);
        return List.copyOf(sides);
    }

    private void side(String label, Sided sided, Type type, List<SideText> sides) {
        Side side = sided.side();
        if (!side.isBlank() || !sided.besides().isEmpty()) {
            List<Inline> runs = new ArrayList<>();
            if (side.retrograde()) {
                runs.add(new Inline.Words(Passage.capital(words.of(BookWord.RETROGRADE)) + ". "));
            }
            side.description().ifPresent(text -> runs.addAll(references.inRuns(text.runs())));
            if (!sided.besides().isEmpty()) {
                runs.add(new Inline.Words(runs.isEmpty() ? "" : Sentence.stop(Inline.plain(runs)) + " "));
                runs.addAll(sided.besides());
            }
            sides.add(new SideText(label, side.legend().map(legend -> legend.value().printed()), List.copyOf(runs)));
        } else if (type.uniface().value()) {
            sides.add(new SideText(label, Optional.empty(), List.of(new Inline.Words(Sentence.of(words.of(BookWord.UNIFACE))))));
        }
    }
}
