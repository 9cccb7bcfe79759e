package exergue.check.rules;

import exergue.check.CoinOfType;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.finding.Severity;
import exergue.legend.Legend;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Type;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A coin that is said to have one side blank has legends or dies on both. */
public final class UnifaceWithTwoSides implements Rule {

    static final Code CODE = new Code("uniface-with-two-sides", Severity.WARNING, "A uniface coin has something on both sides",
            "“uniface: yes” says that one side is blank: there is then no die-axis and no second die. A legend or a die on both sides "
                    + "contradicts it.",
            """
                    uniface: yes
                    obverse: {legend: ΛΑΚ}
                    reverse: {legend: ΩΝ}
                    """,
            """
                    uniface: no
                    obverse: {legend: ΛΑΚ}
                    reverse: {legend: ΩΝ}
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        for (Type type : catalogue.types()) {
            if (type.uniface().value() && type.obverse().legend().isPresent() && type.reverse().legend().isPresent()) {
                faults.add(fault(type.reverse().legend().get().place(), "reverse.legend", "legends on both sides", type));
            }
        }
        for (CoinOfType pair : CoinOfType.all(catalogue)) {
            if (pair.type().uniface().value()) {
                ownLegend(pair).ifPresent(legend -> faults.add(fault(legend.place(), "legend", "legends on both sides", pair.type())));
                secondDie(pair.coin()).ifPresent(die -> faults.add(fault(die.place(), "dies", "dies of both sides", pair.type())));
            }
        }
        return faults;
    }

    /** The coin’s own legend that is one too many; where the type has two already, that is said of the type. */
    private static Optional<Written<Legend>> ownLegend(CoinOfType pair) {
        Optional<Written<Legend>> obverse = pair.coin().obverse().legend();
        Optional<Written<Legend>> reverse = pair.coin().reverse().legend();
        if (reverse.isPresent() && pair.type().reverse().legend().isEmpty()
                && (obverse.isPresent() || pair.type().obverse().legend().isPresent())) {
            return reverse;
        }
        return obverse.filter(legend -> pair.type().obverse().legend().isEmpty() && pair.type().reverse().legend().isPresent());
    }

    private static Optional<Written<String>> secondDie(Coin coin) {
        return coin.dies().filter(dies -> dies.obverse().isPresent()).flatMap(Coin.Dies::reverse);
    }

    private static Finding fault(Place place, String path, String what, Type type) {
        return Finding.of(CODE, place, path, "The type “" + type.id() + "” is uniface, and here are " + what + ".",
                "Take out what does not belong, or “uniface: yes” if the second side is not blank.")
                .withRelated(type.uniface().place(), "one side is blank");
    }
}
