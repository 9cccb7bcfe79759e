package exergue.source.shape;

import exergue.finding.NearMiss;
import exergue.finding.Place;
import exergue.source.yaml.Scalar;
import exergue.source.yaml.Value;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The keys written in one block, ready to be asked for. Unknown ones are reported as soon as it is made. */
public final class Fields {

    private final Block<?> block;
    private final Site site;
    private final Place place;
    private final Map<String, Value> values = new HashMap<>();

    Fields(Block<?> block, Value.Entries entries, Site site) {
        this.block = block;
        this.site = site;
        this.place = entries.place();
        List<Value.Entry> unknown = new ArrayList<>();
        for (Value.Entry entry : entries.entries()) {
            if (isKnown(entry.key().text())) {
                values.put(entry.key().text(), entry.value());
            } else {
                unknown.add(entry);
            }
        }
        unknown.forEach(this::reportUnknown);
    }

    private boolean isKnown(String name) {
        for (Key<?> key : block.keys()) {
            if (key.name().equals(name)) {
                return true;
            }
        }
        return false;
    }

    public <T> T get(Key<T> key) {
        return key.from(this);
    }

    public Site site() {
        return site;
    }

    public Place place() {
        return place;
    }

    <T> T required(Key<T> key, Wanted<T> wanted) {
        Value value = values.get(key.name());
        if (value == null || isNothing(value, wanted)) {
            site.report(ShapeCodes.MISSING_KEY, value == null ? place : value.place(),
                    value == null ? "The key “" + key.name() + "” is missing here."
                            : "The key “" + key.name() + "” has no value." + hintOfComment(value),
                    "Write it: " + key.name() + ": " + (key.example().isEmpty() ? "…" : key.example()) + ".");
            return wanted.standIn(site.at(key.name()), place);
        }
        Site here = site.at(key.name());
        return wanted.bind(value, here).orElseGet(() -> wanted.standIn(here, value.place()));
    }

    <T> Optional<T> optional(Key<?> key, Wanted<T> wanted) {
        Value value = values.get(key.name());
        if (value == null) {
            return Optional.empty();
        }
        if (isNothing(value, wanted)) {
            site.at(key.name()).report(ShapeCodes.EMPTY_VALUE, value.place(),
                    "The key “" + key.name() + "” has no value." + hintOfComment(value),
                    "Write a value, or delete the key.");
            return Optional.empty();
        }
        return wanted.bind(value, site.at(key.name()));
    }

    private static boolean isNothing(Value value, Wanted<?> wanted) {
        boolean mayBeEmpty = wanted instanceof Text<?> text && text.mayBeEmpty();
        return value instanceof Scalar scalar && scalar.isNothing() && !(mayBeEmpty && !scalar.plain());
    }

    private static String hintOfComment(Value value) {
        return value instanceof Scalar scalar && scalar.plain()
                ? " (What follows # is a comment; a value that begins with # must be in quotes.)" : "";
    }

    /** Inside braces a comma makes a key of what follows it, though no colon does. */
    private static boolean hasNoColon(Value.Entry entry) {
        Place key = entry.key().place();
        Place value = entry.value().place();
        return value.length() == 0 && value.line() == key.line() && value.column() == key.column() + key.length();
    }

    /** Reports a key nobody knows; one that is nearly right is taken as meant, so that its value is looked at too. */
    private void reportUnknown(Value.Entry entry) {
        String name = entry.key().text();
        Optional<String> near = NearMiss.of(name, block.names());
        near.filter(n -> !values.containsKey(n)).ifPresent(n -> values.put(n, entry.value()));
        List<String> elsewhere = Homes.of(name, site.root());
        String remedy;
        if (hasNoColon(entry)) {
            remedy = "If it belongs to the text before the comma, put the whole text in quotation marks: inside { } a comma ends a value.";
        } else if (!elsewhere.isEmpty()) {
            remedy = "It belongs under " + elsewhere.get(0) + near.map(n -> "; or did you mean “" + n + "”?").orElse(".");
        } else if (near.isPresent()) {
            remedy = "Did you mean “" + near.get() + "”?";
        } else {
            remedy = "The keys that can stand here are: " + block.keyNames() + ".";
        }
        site.at(name).report(ShapeCodes.UNKNOWN_KEY, entry.key().place(),
                "“" + name + "” is not a key of " + block.name() + ".", remedy);
    }
}
