package exergue.check.rules;

import exergue.check.Doubles;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Type;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Two coins, or two types, bear the same id. */
public final class IdUsedTwice implements Rule {

    static final Code CODE = new Code("id-used-twice", Severity.ERROR,
            "Two entries bear the same id",
            "The id is what ties coins, types and cross-references together; it must name one entry only. Two files of "
                    + "the same name in different sub-folders are the usual cause.",
            """
                    # coins/hoard/lk-0042.yaml and coins/museum/lk-0042.yaml
                    id: lk-0042
                    """,
            """
                    # coins/hoard/lk-0042.yaml and coins/museum/lk-0242.yaml
                    id: lk-0242
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        Doubles.among(catalogue.coins(), IdUsedTwice::idOf).forEach(pair -> faults.add(fault("coin", pair)));
        Doubles.among(catalogue.types(), IdUsedTwice::typeIdOf).forEach(pair -> faults.add(fault("type", pair)));
        return faults;
    }

    private static Optional<Doubles.Mark> idOf(Coin coin) {
        return mark(coin.id());
    }

    private static Optional<Doubles.Mark> typeIdOf(Type type) {
        return mark(type.id());
    }

    private static Optional<Doubles.Mark> mark(Written<String> id) {
        return id.value().isBlank() ? Optional.empty() : Optional.of(new Doubles.Mark(id.value(), id.place()));
    }

    private static Finding fault(String thing, Doubles.Pair<?> pair) {
        String id = pair.mark().text();
        return Finding.of(CODE, pair.mark().place(), "id",
                "The id “" + id + "” is borne by two " + thing + "s.",
                "Give one of them another id, and its file the same name.")
                .withRelated(pair.first().place(), "the first " + thing + " with this id");
    }
}
