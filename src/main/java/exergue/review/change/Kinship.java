package exergue.review.change;

import java.util.List;

/** One entry that has become several, or several that have become one. */
public sealed interface Kinship {

    Kinship reversed();

    /** @param into at least two; the entry itself may be among them */
    record Split(Subject from, List<Subject> into) implements Kinship {

        public Split {
            into = List.copyOf(into);
        }

        @Override
        public Kinship reversed() {
            return new Joined(into, from);
        }
    }

    record Joined(List<Subject> from, Subject into) implements Kinship {

        public Joined {
            from = List.copyOf(from);
        }

        @Override
        public Kinship reversed() {
            return new Split(into, from);
        }
    }
}
