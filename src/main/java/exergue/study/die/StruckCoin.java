package exergue.study.die;

import exergue.model.NaturalOrder;
import java.util.Comparator;
import java.util.Optional;

/** What a die study knows of a coin. @param id of the coin; a die that could not be told is empty */
public record StruckCoin(String id, Optional<DieOfCoin> obverse, Optional<DieOfCoin> reverse) {

    static final Comparator<StruckCoin> BY_ID = Comparator.comparing(StruckCoin::id, NaturalOrder.INSTANCE);

    public Optional<DieOfCoin> of(DieSide side) {
        return side == DieSide.OBVERSE ? obverse : reverse;
    }

    /** Empty unless both dies are known. */
    Optional<DiePair> pair() {
        return obverse.flatMap(first -> reverse.map(second -> new DiePair(first.die(), second.die())));
    }
}
