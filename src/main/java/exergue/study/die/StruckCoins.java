package exergue.study.die;

import exergue.model.Coin;
import exergue.model.HouseStyle;
import exergue.model.Type;
import exergue.model.Written;
import java.util.Optional;
import java.util.OptionalInt;

/** What the entries of coins say of their dies. @param names within what the name of a die is one die's alone */
public record StruckCoins(HouseStyle.DieNames names) {

    public StruckCoin of(Coin coin, Type type) {
        String within = switch (names) {
            case ONE_SERIES -> "";
            case BY_MINT -> type.mint().value();
            case BY_TYPE -> type.id().value();
        };
        return new StruckCoin(coin.id().value(),
                coin.dies().flatMap(dies -> dies.obverse().map(name -> die(new Die(DieSide.OBVERSE, within, name.value()), dies.obverseState()))),
                coin.dies().flatMap(dies -> dies.reverse().map(name -> die(new Die(DieSide.REVERSE, within, name.value()), dies.reverseState()))));
    }

    private static DieOfCoin die(Die die, Optional<Coin.DieState> state) {
        return new DieOfCoin(die, state.map(said -> OptionalInt.of(said.number().value())).orElse(OptionalInt.empty()),
                state.flatMap(Coin.DieState::flaw).map(Written::value));
    }
}
