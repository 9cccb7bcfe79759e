package exergue.study.die;

import java.util.ArrayList;
import java.util.List;

/** Why the estimates of a sample are to be taken with care. */
public enum Caution {

    /** No two coins share a die: nothing but Chao's estimator has a value. */
    NO_DIE_TWICE,

    /**
     * Fewer than two coins a die. L. Villaronga holds estimates from two or three coins a die for reliable, as quoted at
     * qblay.com, Estimation of the number of original dies.
     */
    FEWER_THAN_TWO_A_DIE,

    /** Fewer than ten coins: a choice of ours, no source. */
    FEW_COINS;

    private static final int FEW = 10;

    /** Those that hold of a sample; none for a sample without coins. */
    public static List<Caution> of(DieCounts counts) {
        List<Caution> cautions = new ArrayList<>();
        int coins = counts.coins();
        if (coins > 0 && coins == counts.dies()) {
            cautions.add(NO_DIE_TWICE);
        } else if (coins < 2 * counts.dies()) {
            cautions.add(FEWER_THAN_TWO_A_DIE);
        }
        if (coins > 0 && coins < FEW) {
            cautions.add(FEW_COINS);
        }
        return List.copyOf(cautions);
    }
}
