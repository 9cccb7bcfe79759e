package exergue.check;

import exergue.model.Coin;
import exergue.model.Measurement;
import java.util.ArrayList;
import java.util.List;

/** One measurement of a coin and where in its entry it stands: {@code measured} or {@code also-measured[2]}. */
public record Hand(Measurement measurement, String path) {

    /** All measurements of a coin, the main one first. */
    public static List<Hand> of(Coin coin) {
        List<Hand> hands = new ArrayList<>();
        coin.measured().ifPresent(main -> hands.add(new Hand(main, "measured")));
        for (int i = 0; i < coin.alsoMeasured().size(); i++) {
            hands.add(new Hand(coin.alsoMeasured().get(i), "also-measured[" + (i + 1) + "]"));
        }
        return hands;
    }
}
