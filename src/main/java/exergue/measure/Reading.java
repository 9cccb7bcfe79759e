package exergue.measure;

import java.util.List;

/** What an entry says of one measurement: a figure, or why there is none. These are never mixed up. */
public sealed interface Reading {

    /** The text as it stands in the entry. */
    String recorded();

    /**
     * A figure was read.
     *
     * @param form       one figure, two directions, or least and greatest
     * @param asRecorded the figures in the recorded units; a compound reading (2 dwt 11 gr) has several that add up, a
     *                   density the weight in air and in water, if it was found by those
     * @param normal     one figure, or two for {@link Form#TWO_WAY} and {@link Form#RANGE}, in g, mm, clock hours, g/cm³ or mm²;
     *                   exact, never rounded
     * @param qualifier  about, less than, more than, uncertain
     */
    record Read(Kind kind, String recorded, Form form, List<Quantity> asRecorded, List<Quantity> normal,
                Qualifier qualifier) implements Reading {

        public Read {
            asRecorded = List.copyOf(asRecorded);
            normal = List.copyOf(normal);
        }

        /** True where the record stands in other units than the book prints. */
        public boolean converted() {
            return !weighedInWater() && asRecorded.stream().anyMatch(q -> !q.unit().isNormal());
        }

        /** True for a density worked out from two weighings, which then stand in {@link #asRecorded()}. */
        public boolean weighedInWater() {
            return kind == Kind.DENSITY && asRecorded.get(0).unit().dimension() == Dimension.MASS;
        }

        /** The first or only figure, in the normal unit. */
        public Quantity first() {
            return normal.get(0);
        }
    }

    /** It could have been measured and was not, or the record is lost. */
    record Missing(String recorded, String why) implements Reading { }

    /** It cannot be measured: the axis of a uniface coin. */
    record NotApplicable(String recorded, String why) implements Reading { }

    /** A figure was written but cannot be read. */
    record Illegible(String recorded, String why) implements Reading { }

    /** How the figures belong together. */
    enum Form { SINGLE, TWO_WAY, RANGE }

    /** What the record says of its own figure. */
    enum Qualifier { NONE, ABOUT, LESS_THAN, MORE_THAN, UNCERTAIN }
}
