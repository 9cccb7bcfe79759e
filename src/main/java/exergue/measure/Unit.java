package exergue.measure;

import java.util.List;

/**
 * One unit with its exact factor to the normal unit of its dimension (gram, millimetre, clock hour) and the
 * published source of that factor.
 *
 * @param id        stable word, lower case: {@code grain}
 * @param symbol    as printed: {@code gr}
 * @param name      in full, singular: {@code grain}
 * @param plural    in full, plural: {@code grains}
 * @param factor    how many normal units one of these is
 * @param source    what fixes the factor, and whether that was looked up
 * @param spellings every form accepted after a figure: lower case, no full stops, single spaces
 */
public record Unit(String id, String symbol, String name, String plural, Dimension dimension, UnitSystem system,
                   Ratio factor, UnitSource source, List<String> spellings) {

    public Unit {
        spellings = List.copyOf(spellings);
    }

    /** True for the units the book prints: the gram, the millimetre, the clock hour. */
    public boolean isNormal() {
        return id.equals(dimension.normalUnit());
    }
}
