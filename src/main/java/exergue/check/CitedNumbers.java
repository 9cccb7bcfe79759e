package exergue.check;

import exergue.model.Catalogue;
import exergue.model.Reference;
import java.util.List;
import java.util.stream.Stream;

/** All references of a catalogue that have a number. */
public final class CitedNumbers {

    private CitedNumbers() { }

    /** Those of types, then those of coins. */
    public static List<Reference> in(Catalogue catalogue) {
        return Stream.concat(catalogue.types().stream().flatMap(type -> type.references().stream()),
                        catalogue.coins().stream().flatMap(coin -> coin.references().stream()))
                .filter(reference -> !reference.number().value().isBlank()).toList();
    }
}
