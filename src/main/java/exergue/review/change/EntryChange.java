package exergue.review.change;

import java.util.List;
import java.util.Optional;

/** One entry that is new, gone, or says something else. */
public sealed interface EntryChange {

    /** As it is called after the change, or before it where it is gone. */
    Subject subject();

    /** In the order of the model. */
    List<FieldChange> fields();

    EntryChange reversed();

    /** @param fields what it says, each with nothing before it */
    record Added(Subject subject, List<FieldChange> fields) implements EntryChange {

        public Added {
            fields = List.copyOf(fields);
        }

        @Override
        public EntryChange reversed() {
            return new TakenOut(subject, reverse(fields));
        }
    }

    /** @param fields what it said, each with nothing after it */
    record TakenOut(Subject subject, List<FieldChange> fields) implements EntryChange {

        public TakenOut {
            fields = List.copyOf(fields);
        }

        @Override
        public EntryChange reversed() {
            return new Added(subject, reverse(fields));
        }
    }

    /** @param before with another id where the entry was renamed */
    record Altered(Subject before, Subject subject, List<FieldChange> fields) implements EntryChange {

        public Altered {
            fields = List.copyOf(fields);
        }

        @Override
        public EntryChange reversed() {
            return new Altered(subject, before, reverse(fields));
        }

        public boolean renamed() {
            return !before.id().equals(subject.id());
        }

        /** The change of the field with this path, if it has changed. */
        public Optional<FieldChange> field(String path) {
            return fields.stream().filter(change -> change.field().path().equals(path)).findFirst();
        }
    }

    private static List<FieldChange> reverse(List<FieldChange> fields) {
        return fields.stream().map(FieldChange::reversed).toList();
    }
}
