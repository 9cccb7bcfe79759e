package exergue.source.shape;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Declares the keys of one block, in the order of the reference, and closes the block over them. */
public final class Keys {

    private static final Function<Desk, Collection<String>> NO_IDS = desk -> List.of();

    private final String name;
    private final List<Key<?>> keys = new ArrayList<>();

    /** @param name what the block describes: "a coin" */
    public Keys(String name) {
        this.name = name;
    }

    /** A key that must be there. */
    public <T> Key<T> must(String key, Wanted<T> wanted, String about, String example) {
        return declare(new Key<>(key, wanted, new Key.Presence(true, null), new Key.Words(about, example, NO_IDS),
                self -> fields -> fields.required(self, wanted)));
    }

    /** A key that must be there and names one of several things that are declared elsewhere. */
    public <T> Key<T> mustName(String key, Wanted<T> wanted, Function<Desk, Collection<String>> ids, String about, String example) {
        return declare(new Key<>(key, wanted, new Key.Presence(true, null), new Key.Words(about, example, ids),
                self -> fields -> fields.required(self, wanted)));
    }

    /** A key that may be there. */
    public <T> Key<Optional<T>> may(String key, Wanted<T> wanted, String about, String example) {
        return declare(new Key<>(key, wanted, new Key.Presence(false, null), new Key.Words(about, example, NO_IDS),
                self -> fields -> fields.optional(self, wanted)));
    }

    /** A key that counts as {@code otherwise} where it is not written. */
    public <T> Key<T> or(String key, Wanted<T> wanted, String otherwise, String about, String example) {
        return declare(new Key<>(key, wanted, new Key.Presence(false, otherwise), new Key.Words(about, example, NO_IDS),
                self -> fields -> fields.optional(self, wanted)
                        .orElseGet(() -> wanted.unlessWritten(otherwise, fields.site(), fields.place()))));
    }

    private <T> Key<T> declare(Key<T> key) {
        keys.add(key);
        return key;
    }

    public <T> Block<T> block(Function<Fields, T> binding) {
        return new Block<>(name, keys, binding);
    }
}
