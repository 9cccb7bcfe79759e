package exergue.study.match;

import java.util.OptionalDouble;

/**
 * A coin of the catalogue that a fresh one may be.
 *
 * @param coin     its id
 * @param share    how probable it is that this is the coin, 0 to 1, taken by itself, without regard to the other fresh coins
 * @param weight   fresh less recorded, in g; empty where one of the two has no figure
 * @param diameter the same in mm
 * @param axis     the shorter way round, in hours
 */
public record Candidate(String coin, double share, OptionalDouble weight, OptionalDouble diameter, OptionalDouble axis) { }
