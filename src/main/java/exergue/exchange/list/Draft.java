package exergue.exchange.list;

import exergue.measure.Kind;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What one row says of a coin.
 *
 * @param row    that says it
 * @param id     for a new entry
 * @param hands  readings by their convention, that of the list first
 * @param fields of the entry, but for its id and its readings; later ones are joined to earlier
 */
record Draft(SheetRow row, String id, Map<String, Map<Kind, Figure>> hands, List<Field> fields) {

    Draft {
        Map<String, Map<Kind, Figure>> copy = new LinkedHashMap<>();
        hands.forEach((by, readings) -> copy.put(by, Collections.unmodifiableMap(new EnumMap<>(readings))));
        hands = Collections.unmodifiableMap(copy);
        fields = List.copyOf(fields);
    }

    /** A reading as it is to be written, and where it was found. */
    record Figure(String text, RowFindings.Spot spot) { }

    /**
     * One thing that is said.
     *
     * @param spot  where
     * @param ofRow false for what holds for every coin of the list
     */
    record Field(EntryNode.Keys node, RowFindings.Spot spot, boolean ofRow) { }

    /** The whole entry. */
    EntryNode entry() {
        EntryNode entry = EntryNode.key("id", EntryNode.words(id));
        List<EntryNode> measurements = hands.entrySet().stream().map(hand -> measurement(hand.getKey(), hand.getValue())).toList();
        if (!measurements.isEmpty()) {
            entry = EntryNode.joined(entry, EntryNode.key("measured", measurements.get(0)));
        }
        if (measurements.size() > 1) {
            entry = EntryNode.joined(entry, EntryNode.key("also-measured",
                    new EntryNode.Members(measurements.subList(1, measurements.size()))));
        }
        for (Field field : fields) {
            entry = EntryNode.joined(entry, field.node());
        }
        return entry;
    }

    static EntryNode measurement(String by, Map<Kind, Figure> readings) {
        Map<String, EntryNode> keys = new LinkedHashMap<>();
        keys.put("by", EntryNode.words(by));
        readings.forEach((kind, figure) -> keys.put(kind.word(), EntryNode.words(figure.text())));
        return new EntryNode.Keys(keys);
    }

    /** The field of a path of keys, such as collection, number. */
    static Field field(Taken taken, EntryNode value, String... path) {
        EntryNode node = value;
        List<String> inwards = new ArrayList<>(Stream.of(path).toList());
        Collections.reverse(inwards);
        for (String key : inwards) {
            node = EntryNode.key(key, node);
        }
        return new Field((EntryNode.Keys) node, taken.spot(), taken.ofRow());
    }
}
