package exergue.study.die;

import exergue.model.NaturalOrder;
import java.util.List;

/** A pair of dies and the coins that it struck. @param coins ids, in natural order */
public record Combination(DiePair pair, List<String> coins) {

    public Combination {
        coins = coins.stream().sorted(NaturalOrder.INSTANCE).toList();
    }
}
