package exergue.study.die;

/** Which of the two dies of a coin. */
public enum DieSide {
    OBVERSE, REVERSE;

    public DieSide other() {
        return this == OBVERSE ? REVERSE : OBVERSE;
    }
}
