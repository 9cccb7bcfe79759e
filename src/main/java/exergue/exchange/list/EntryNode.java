package exergue.exchange.list;

import exergue.source.yaml.Scalar;
import exergue.source.yaml.Value;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is to stand in an entry: words, members of a list, or keys with their values. */
sealed interface EntryNode {

    record Words(String text) implements EntryNode { }

    record Members(List<EntryNode> all) implements EntryNode {
        public Members {
            all = List.copyOf(all);
        }
    }

    record Keys(Map<String, EntryNode> byKey) implements EntryNode {
        public Keys {
            byKey = Collections.unmodifiableMap(new LinkedHashMap<>(byKey));
        }
    }

    static EntryNode words(String text) {
        return new Words(text);
    }

    static EntryNode key(String key, EntryNode value) {
        return new Keys(Map.of(key, value));
    }

    /** In YAML on one line, every text in double quotes: plain enough to be read back whatever the text. */
    default String yaml() {
        if (this instanceof Words words) {
            return quoted(words.text());
        }
        if (this instanceof Members members) {
            return members.all().stream().map(EntryNode::yaml).collect(Collectors.joining(", ", "[", "]"));
        }
        return ((Keys) this).byKey().entrySet().stream().map(entry -> entry.getKey() + ": " + entry.getValue().yaml())
                .collect(Collectors.joining(", ", "{", "}"));
    }

    /** A text as an author would write it as a key or a value: in quotation marks where YAML wants them. */
    static String plainOrQuoted(String text) {
        boolean plain = text.matches("[\\p{L}\\p{N}]([\\p{L}\\p{N} .()/_°-]*[\\p{L}\\p{N}.)])?");
        return plain ? text : text.chars().anyMatch(c -> c < ' ') ? quoted(text) : "'" + text.replace("'", "''") + "'";
    }

    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.chars().forEach(c -> {
            if (c == '"' || c == '\\') {
                quoted.append('\\').append((char) c);
            } else if (c == '\n') {
                quoted.append("\\n");
            } else if (c < ' ') {
                quoted.append(String.format(Locale.ROOT, "\\u%04X", c));
            } else {
                quoted.append((char) c);
            }
        });
        return quoted.append('"').toString();
    }

    /** Both with the members and the values of the other; what both have of one key is joined if it has keys or members itself. */
    static EntryNode joined(EntryNode one, EntryNode other) {
        if (one instanceof Keys first && other instanceof Keys second) {
            Map<String, EntryNode> all = new LinkedHashMap<>(first.byKey());
            second.byKey().forEach((key, value) -> all.merge(key, value, EntryNode::joined));
            return new Keys(all);
        }
        if (one instanceof Members first && other instanceof Members second) {
            return new Members(Stream.concat(first.all().stream(), second.all().stream()).toList());
        }
        return other;
    }

    /** The same as this, as it stands in a file. */
    static EntryNode of(Value value) {
        if (value instanceof Scalar scalar) {
            return new Words(scalar.text());
        }
        if (value instanceof Value.Items items) {
            return new Members(items.values().stream().map(EntryNode::of).toList());
        }
        Map<String, EntryNode> byKey = new LinkedHashMap<>();
        ((Value.Entries) value).entries().forEach(entry -> byKey.put(entry.key().text(), of(entry.value())));
        return new Keys(byKey);
    }

    /** For a sentence: words as they stand, the others as YAML would have them. */
    default String shown() {
        return this instanceof Words words ? words.text() : yaml();
    }
}
