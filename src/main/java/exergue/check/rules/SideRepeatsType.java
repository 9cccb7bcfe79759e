package exergue.check.rules;

import exergue.check.CoinOfType;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Inline;
import exergue.model.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A coin describes a side in the words of its type. */
public final class SideRepeatsType implements Rule {

    static final Code CODE = new Code("side-repeats-type", Severity.NOTE, "A coin repeats what its type says",
            "A coin’s own obverse or reverse says only what differs from the type, and is printed with the coin. What repeats the type "
                    + "looks in print as if something were different.",
            """
                    # the type has: obverse: {description: Head of a nymph right}
                    obverse: {description: Head of a nymph right}
                    """,
            """
                    # leave “obverse” out of the coin
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        for (CoinOfType pair : CoinOfType.all(catalogue)) {
            repeated(pair.coin().obverse(), pair.type().obverse()).ifPresent(place -> faults.add(fault(place, "obverse", pair)));
            repeated(pair.coin().reverse(), pair.type().reverse()).ifPresent(place -> faults.add(fault(place, "reverse", pair)));
        }
        return faults;
    }

    /** Where the coin says what the type says of the side. */
    private static Optional<Place> repeated(Side own, Side type) {
        if (own.legend().isPresent() && type.legend().isPresent() && own.retrograde() == type.retrograde()
                && own.legend().get().value().equals(type.legend().get().value())) {
            return own.legend().map(legend -> legend.place());
        }
        return own.description().filter(words -> type.description().isPresent()
                && Inline.plain(words.runs()).equals(Inline.plain(type.description().get().runs()))).map(words -> words.place());
    }

    private static Finding fault(Place place, String side, CoinOfType pair) {
        return Finding.of(CODE, place, side, "The " + side + " of “" + pair.coin().id() + "” says what its type “" + pair.type().id()
                + "” says already.", "Leave it out of the coin, or write what differs.");
    }
}
