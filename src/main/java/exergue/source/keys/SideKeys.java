package exergue.source.keys;

import exergue.legend.Legend;
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

    private static final Key<Optional<Written<Legend>>> LEGEND = KEYS.may("legend", Legends.LEGEND,
            "The legend as cut, in its own script, with the brackets of the Leiden system: [ΑΒΓ] restored, [...] lost, Α(ΒΓ) "
                    + "written out, ⟨ΑΒ⟩ left out by the cutter, {ΑΒ} cut by mistake, ⟦ΑΒΓ⟧ erased, a dot below a damaged letter.",
            "ΛΑΜΠ[ΡΟΝ]");
    private static final Key<Written<Boolean>> RETROGRADE = KEYS.or("retrograde", Texts.YES_OR_NO, "no",
            "Whether the legend runs from right to left; write it as it is read.", "yes");
    private static final Key<Optional<Phrase>> DESCRIPTION = KEYS.may("description", Texts.LINE,
            "What is to be seen, in one line.", "Diademed head right");

    static final Block<Side> BLOCK = KEYS.block(f -> new Side(f.get(LEGEND), f.get(RETROGRADE).value(), f.get(DESCRIPTION)));

    private SideKeys() { }
}
