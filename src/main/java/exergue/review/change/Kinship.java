package exergue.review.change;

import java.util.List;

/** One entry that has become several, several that have become one, or two that have changed places. */
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

    /** Two entries of which each says now, in every field that has changed, what the other said before. */
    record Exchanged(List<Subject> before, List<Subject> after) implements Kinship {

        public Exchanged {
            before = List.copyOf(before);
            after = List.copyOf(after);
        }

        @Override
        public Kinship reversed() {
            return new Exchanged(after, before);
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
