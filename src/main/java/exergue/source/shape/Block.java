package exergue.source.shape;

import exergue.finding.Place;
import exergue.source.yaml.Value;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Keys that belong together, and the record they become.
 *
 * @param name what it describes: "a coin"
 * @param keys in the order of the reference
 */
public record Block<T>(String name, List<Key<?>> keys, Function<Fields, T> binding) implements Wanted<T> {

    public Block {
        keys = List.copyOf(keys);
    }

    @Override
    public Optional<T> bind(Value value, Site site) {
        if (value instanceof Value.Entries entries) {
            return Optional.of(binding.apply(new Fields(this, entries, site)));
        }
        site.report(ShapeCodes.WRONG_SHAPE, value.place(),
                (site.key().isEmpty() ? "Here" : "“" + site.key() + "”") + " wants keys for " + name + ", and here stands "
                        + value.name() + ".",
                "Put the keys on lines of their own, two spaces further in: " + keyNames() + ".");
        return Optional.empty();
    }

    @Override
    public T unlessWritten(String text, Site site, Place place) {
        return standIn(site, place);
    }

    @Override
    public T standIn(Site site, Place place) {
        return binding.apply(new Fields(this, new Value.Entries(List.of(), place), site.muted()));
    }

    Collection<String> names() {
        return keys.stream().map(Key::name).toList();
    }

    String keyNames() {
        return String.join(", ", names());
    }
}
