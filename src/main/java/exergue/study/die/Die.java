package exergue.study.die;

import exergue.model.NaturalOrder;
import java.util.Comparator;

/**
 * One die.
 *
 * @param within what its name counts in: the id of a mint or type, empty where it counts in the whole catalogue
 * @param name   as the entries give it: "O24"
 */
public record Die(DieSide side, String within, String name) implements Comparable<Die> {

    private static final Comparator<Die> ORDER = Comparator.comparing(Die::side)
            .thenComparing(Die::within, NaturalOrder.INSTANCE).thenComparing(Die::name, NaturalOrder.INSTANCE);

    @Override
    public int compareTo(Die other) {
        return ORDER.compare(this, other);
    }
}
