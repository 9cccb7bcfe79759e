package exergue.study.die;

import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.HouseStyle;
import exergue.model.Type;
import exergue.model.Written;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** What the entries of coins say of their dies. */
public final class StruckCoins {

    private final HouseStyle.DieNames names;
    private final Map<String, String> mints = new HashMap<>();

    private StruckCoins(Catalogue catalogue) {
        this.names = catalogue.style().dieNames();
        for (Type type : catalogue.types()) {
            mints.put(type.id().value(), type.mint().value());
        }
    }

    /** Some coins of a catalogue, in their order; those without dies as well. */
    public static List<StruckCoin> of(Catalogue catalogue, Collection<Coin> coins) {
        StruckCoins struck = new StruckCoins(catalogue);
        return coins.stream().map(struck::struck).toList();
    }

    private StruckCoin struck(Coin coin) {
        return new StruckCoin(coin.id().value(),
                coin.dies().flatMap(dies -> dies.obverse().map(name -> die(coin, DieSide.OBVERSE, name, dies.obverseState()))),
                coin.dies().flatMap(dies -> dies.reverse().map(name -> die(coin, DieSide.REVERSE, name, dies.reverseState()))));
    }

    private DieOfCoin die(Coin coin, DieSide side, Written<String> name, Optional<Coin.DieState> state) {
        return new DieOfCoin(new Die(side, within(coin), name.value()),
                state.map(said -> OptionalInt.of(said.number().value())).orElse(OptionalInt.empty()),
                state.flatMap(Coin.DieState::flaw).map(Written::value));
    }

    private String within(Coin coin) {
        return switch (names) {
            case ONE_SERIES -> "";
            case BY_MINT -> mints.getOrDefault(coin.type().value(), "");
            case BY_TYPE -> coin.type().value();
        };
    }
}
