package exergue.source.yaml;

import exergue.finding.Place;
import java.util.List;

/** What stands in a YAML file, with its places and no meaning yet: text, a list, or keys with values. */
public sealed interface Value permits Scalar, Value.Items, Value.Entries {

    Place place();

    /** What a reader would call it: "a list". */
    String name();

    record Items(List<Value> values, Place place) implements Value {
        public Items {
            values = List.copyOf(values);
        }

        @Override
        public String name() {
            return "a list";
        }
    }

    record Entries(List<Entry> entries, Place place) implements Value {
        public Entries {
            entries = List.copyOf(entries);
        }

        @Override
        public String name() {
            return "a block of keys";
        }
    }

    /** One key with its value. */
    record Entry(Scalar key, Value value) { }
}
