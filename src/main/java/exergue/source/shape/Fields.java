package exergue.source.shape;

import exergue.finding.Finding;
import exergue.finding.NearMiss;
import exergue.finding.Place;
import exergue.source.yaml.Scalar;
import exergue.source.yaml.Value;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The keys written in one block, ready to be asked for. Unknown ones are reported as soon as it is made. */
public final class Fields {

    private final Block<?> block;
    private final Site site;
    private final Place place;
    private final Map<String, Value.Entry> entries = new HashMap<>();

    Fields(Block<?> block, Value.Entries written, Site site) {
        this.block = block;
        this.site = site;
        this.place = written.place();
        List<Value.Entry> unknown = new ArrayList<>();
        for (Value.Entry entry : written.entries()) {
            if (isKnown(entry.key().text())) {
                entries.put(entry.key().text(), entry);
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
        Value.Entry entry = entries.get(key.name());
        if (entry == null || isNothing(entry.value(), wanted)) {
            site.report(ShapeCodes.MISSING_KEY, entry == null ? site.head().orElse(place) : entry.value().place(),
                    entry == null ? "The key “" + key.name() + "” is missing " + here() + "."
                            : "The key “" + key.name() + "” has no value." + hintOfComment(entry.value()), write(key));
            return wanted.standIn(site.at(key.name()), place);
        }
        Site here = site.at(key.name(), entry.key().place());
        return wanted.bind(entry.value(), here).orElseGet(() -> wanted.standIn(here, entry.value().place()));
    }

    private String here() {
        return site.head().isPresent() ? "under “" + site.key() + "”" : "here";
    }

    private String write(Key<?> key) {
        List<String> ids = List.copyOf(key.ids(site.desk()));
        if (ids.isEmpty()) {
            return "Write it: " + key.name() + ": " + (key.example().isEmpty() ? "…" : key.example()) + ".";
        }
        String others = ids.stream().skip(1).map(id -> "“" + id + "”").collect(Collectors.joining(", "));
        return "Write it: " + key.name() + ": " + ids.get(0) + (others.isEmpty() ? "." : ", or " + others + " in its place.");
    }

    <T> Optional<T> optional(Key<?> key, Wanted<T> wanted) {
        Value.Entry entry = entries.get(key.name());
        if (entry == null) {
            return Optional.empty();
        }
        if (isNothing(entry.value(), wanted)) {
            site.at(key.name()).report(ShapeCodes.EMPTY_VALUE, entry.value().place(),
                    "The key “" + key.name() + "” has no value." + hintOfComment(entry.value()),
                    "Write a value, or delete the key.");
            return Optional.empty();
        }
        return wanted.bind(entry.value(), site.at(key.name(), entry.key().place()));
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
        near.filter(n -> !entries.containsKey(n)).ifPresent(n -> entries.put(n, entry));
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
        Finding finding = Finding.of(ShapeCodes.UNKNOWN_KEY, entry.key().place(), site.at(name).path(),
                "“" + name + "” is not a key of " + block.name() + ".", remedy);
        Optional<String> certain = near.filter(n -> elsewhere.isEmpty() && entries.get(n) == entry && entry.key().plain() && !hasNoColon(entry))
                .flatMap(n -> NearMiss.certain(name, block.names()));
        site.report(certain.map(n -> finding.withEditAt(entry.key().place(), name, n)).orElse(finding));
    }
}
