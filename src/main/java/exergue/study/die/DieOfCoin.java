package exergue.study.die;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * The die of one side of a coin and the state it was in.
 *
 * @param state from 1, the earliest known; empty where the entry does not say
 * @param flaw  by which the state is known, in the author's words
 */
public record DieOfCoin(Die die, OptionalInt state, Optional<String> flaw) { }
