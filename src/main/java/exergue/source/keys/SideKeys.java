package exergue.source.keys;

import exergue.model.Phrase;
import exergue.model.Side;
import exergue.model.Written;
import exergue.source.shape.Block;
import exergue.source.shape.Key;
import exergue.source.shape.Keys;
import exergue.source.shape.Texts;
import java.util.Optional;

/** {@code obverse} and {@code reverse} of a type or a coin. */
final class SideKeys {

    private static final Keys KEYS = new Keys("one side");

    private static final Key<Optional<Written<String>>> LEGEND = KEYS.may("legend", Texts.WORDS,
            "The legend as cut, in its own script; lost letters in square brackets.", "ΛΑΜΠ[ΡΟΝ]");
    private static final Key<Optional<Phrase>> DESCRIPTION = KEYS.may("description", Texts.LINE,
            "What is to be seen, in one line.", "Diademed head right");

    static final Block<Side> BLOCK = KEYS.block(f -> new Side(f.get(LEGEND), f.get(DESCRIPTION)));

    private SideKeys() { }
}
