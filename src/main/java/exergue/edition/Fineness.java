package exergue.edition;

import exergue.measure.Alloy;
import exergue.measure.Kind;
import exergue.model.Coin;
import exergue.model.ReadingChoice;
import exergue.model.Type;
import java.util.Optional;

/** What the density of a coin means for the alloy that its type names. */
record Fineness(Alloy alloy, Alloy.Fineness share) {

    static Optional<Fineness> of(Coin coin, Type type, ReadingChoice choice) {
        return type.alloy().flatMap(alloy -> choice.choose(coin, type, Kind.DENSITY).figure()
                .flatMap(density -> alloy.value().fineness(density.first()))
                .map(share -> new Fineness(alloy.value(), share)));
    }

    /** "52 (51–54) per cent gold". */
    String text() {
        return share.text() + " " + alloy.heavier();
    }
}
