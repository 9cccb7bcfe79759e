package exergue.study.die;

import java.util.Comparator;

/** An obverse and a reverse die that struck a coin together. */
public record DiePair(Die obverse, Die reverse) implements Comparable<DiePair> {

    private static final Comparator<DiePair> ORDER = Comparator.comparing(DiePair::obverse).thenComparing(DiePair::reverse);

    public Die die(DieSide side) {
        return side == DieSide.OBVERSE ? obverse : reverse;
    }

    @Override
    public int compareTo(DiePair other) {
        return ORDER.compare(this, other);
    }
}
