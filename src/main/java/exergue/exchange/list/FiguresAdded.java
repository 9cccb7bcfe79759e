package exergue.exchange.list;

import exergue.source.tidy.Tidy;
import exergue.source.text.Notebook;
import exergue.source.text.SourceText;
import exergue.source.yaml.Value;
import exergue.source.yaml.YamlReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Another measurement put into the text of an entry, and not a letter besides: lines go in behind {@code also-measured}, or with
 * that key behind {@code measured}. What comes out is read again; if anything but the new member is otherwise, nothing comes out.
 */
final class FiguresAdded {

    private static final String KEY = "also-measured";

    private FiguresAdded() { }

    /** @param text of an entry, with whatever line ends; @param member in YAML on one line */
    static Optional<String> to(String text, EntryNode member) {
        String lineEnd = text.contains("\r\n") ? "\r\n" : "\n";
        String mark = text.startsWith("\uFEFF") ? "\uFEFF" : "";
        String plain = text.substring(mark.length()).replace("\r\n", "\n");
        Optional<Value.Entries> before = read(plain);
        Optional<String> added = before.flatMap(entries -> added(plain, entries, member));
        Optional<EntryNode> wanted = before.map(entries -> EntryNode.joined(EntryNode.of(entries),
                EntryNode.key(KEY, new EntryNode.Members(List.of(member)))));
        boolean only = added.isPresent() && read(added.get()).map(EntryNode::of).equals(wanted)
                && Tidy.comments(added.get()).equals(Tidy.comments(plain));
        return only ? added.map(one -> mark + one.replace("\n", lineEnd)) : Optional.empty();
    }

    private static Optional<Value.Entries> read(String text) {
        Notebook notebook = new Notebook();
        YamlReader.Read read = YamlReader.read(new SourceText("entry.yaml", text), notebook);
        return notebook.findings().hasErrors() ? Optional.empty()
                : read.value().filter(Value.Entries.class::isInstance).map(Value.Entries.class::cast);
    }

    private static Optional<String> added(String text, Value.Entries entries, EntryNode member) {
        List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
        Optional<Value.Entry> there = entry(entries, KEY);
        Optional<Value.Entry> behind = there.or(() -> entry(entries, "measured")).or(() -> entry(entries, "type"));
        if (behind.isEmpty() || there.isPresent() && !inLines(there.get(), lines)) {
            return Optional.empty();
        }
        int at = lastLine(behind.get(), entries, lines);
        String indent = there.map(entry -> indent(entry, lines)).orElse("  ");
        boolean braces = there.isPresent() && lines.get(first(there.get())).contains("{");
        lines.addAll(at, braces ? List.of(indent + "- {" + String.join(", ", keys(member)) + "}") : inLines(member, indent));
        if (there.isEmpty()) {
            lines.add(at, KEY + ":");
        }
        return Optional.of(String.join("\n", lines));
    }

    private static Optional<Value.Entry> entry(Value.Entries entries, String key) {
        return entries.entries().stream().filter(one -> one.key().text().equals(key)).findFirst();
    }

    /** Whether the members have lines of their own, each with its hyphen. */
    private static boolean inLines(Value.Entry list, List<String> lines) {
        return list.value() instanceof Value.Items items && !items.values().isEmpty()
                && items.values().stream().allMatch(one -> lines.get(one.place().line() - 1).strip().startsWith("-"));
    }

    private static int first(Value.Entry list) {
        return ((Value.Items) list.value()).values().get(0).place().line() - 1;
    }

    private static String indent(Value.Entry list, List<String> lines) {
        String first = lines.get(first(list));
        return first.substring(0, first.indexOf('-'));
    }

    /** Index behind the last line of the value: before the next key, and before the comments and empty lines over that. */
    private static int lastLine(Value.Entry entry, Value.Entries all, List<String> lines) {
        int start = entry.key().place().line();
        int next = all.entries().stream().mapToInt(one -> one.key().place().line()).filter(line -> line > start).min().orElse(lines.size() + 1);
        int at = next - 1;
        while (at > start && (lines.get(at - 1).isBlank() || lines.get(at - 1).startsWith("#"))) {
            at--;
        }
        return at;
    }

    /** As tidy lays a measurement out. */
    private static List<String> inLines(EntryNode member, String indent) {
        List<String> lines = new ArrayList<>();
        keys(member).forEach(key -> lines.add(indent + (lines.isEmpty() ? "- " : "  ") + key));
        return lines;
    }

    /** Each with its value, with quotation marks only where they are needed. */
    private static List<String> keys(EntryNode member) {
        List<String> keys = new ArrayList<>();
        ((EntryNode.Keys) member).byKey().forEach((key, value) -> {
            String text = value.shown();
            boolean plain = text.matches("[\\p{L}\\p{N}][\\p{L}\\p{N} .×°/⁄½¼¾-]*") && !text.endsWith(" ") && !text.matches("[0-9.]+|[0-9]+[eE].*");
            keys.add(key + ": " + (plain ? text : "'" + text.replace("'", "''") + "'"));
        });
        return keys;
    }
}
