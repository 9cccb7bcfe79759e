package exergue.source.shape;

import exergue.finding.Place;
import exergue.source.yaml.Scalar;
import exergue.source.yaml.Value;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Blocks, or texts, under ids the author chooses, in the order of the file.
 *
 * @param ids what an id may look like
 */
public record MapOf<T>(Wanted<T> member, Text<?> ids) implements Wanted<Map<String, T>> {

    public MapOf(Wanted<T> member) {
        this(member, Texts.ID);
    }

    @Override
    public String name() {
        return "ids, each with " + (member instanceof Block<?> ? "a block for " : "") + member.name();
    }

    @Override
    public Optional<Map<String, T>> bind(Value value, Site site) {
        if (!(value instanceof Value.Entries entries)) {
            site.report(ShapeCodes.WRONG_SHAPE, value.place(),
                    "Here " + name() + " is wanted, and there is " + value.name() + ".",
                    "Begin a line with the id and a colon, and put the keys under it, two spaces further in.");
            return Optional.empty();
        }
        Map<String, T> bound = new LinkedHashMap<>();
        for (Value.Entry entry : entries.entries()) {
            Scalar id = entry.key();
            Site here = site.entry(id);
            ids.conversion().convert(id, here);
            Value block = entry.value() instanceof Scalar s && s.isNothing() && member instanceof Block<?>
                    ? new Value.Entries(java.util.List.of(), id.place()) : entry.value();
            bound.put(id.text(), member.bind(block, here).orElseGet(() -> member.standIn(here, id.place())));
        }
        return Optional.of(Collections.unmodifiableMap(bound));
    }

    @Override
    public Map<String, T> unlessWritten(String text, Site site, Place place) {
        return Map.of();
    }

    @Override
    public Map<String, T> standIn(Site site, Place place) {
        return Map.of();
    }
}
