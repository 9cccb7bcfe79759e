package exergue.study.group;

import exergue.measure.Quantity;
import exergue.model.Coin;
import exergue.model.Type;
import exergue.study.die.StruckCoin;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One coin of a group, with its figures as the book prints them.
 *
 * @param weight   in grams; empty where there is none, or one that only says that the true one is less or more
 * @param counts   whether that weight goes into statistics: not for damage, unless the author says so
 * @param weightPlaces decimals of a gram that the record of the weight supports
 * @param diameter in millimetres, of two figures their mean; empty where there is none, or the outline is no longer whole
 * @param axis     in clock hours, 12 as 0; empty where there is none
 * @param density  in g/cm³; empty where there is none
 * @param struck   what its entry says of its dies
 */
public record Member(Coin coin, Type type, OptionalDouble weight, boolean counts, int weightPlaces, OptionalDouble diameter, OptionalDouble axis,
                     Optional<Quantity> density, StruckCoin struck) {

    public String id() {
        return coin.id().value();
    }
}
