package exergue.source.shape;

import java.util.Collection;
import java.util.function.Function;

/**
 * One key: its name, what is wanted after it, whether it must be there, and what the reference says of it.
 * Written once; made by {@link Keys}.
 *
 * @param <T> what a reader of the block gets: the value, or an Optional of it
 */
public final class Key<T> {

    private final String name;
    private final Wanted<?> wanted;
    private final Presence presence;
    private final String about;
    private final String example;
    private final Function<Desk, Collection<String>> ids;
    private final Function<Fields, T> getting;

    /**
     * Whether a key must be there.
     *
     * @param must         an entry without it is not complete
     * @param unlessWritten the text that counts where it is not written; null where nothing does
     */
    record Presence(boolean must, String unlessWritten) { }

    /** {@code getting} is made by the key itself, so that it can name the key in what it reports. */
    Key(String name, Wanted<?> wanted, Presence presence, Words words, Function<Key<T>, Function<Fields, T>> getting) {
        this.name = name;
        this.wanted = wanted;
        this.presence = presence;
        this.about = words.about();
        this.example = words.example();
        this.ids = words.ids();
        this.getting = getting.apply(this);
    }

    /** @param ids those declared elsewhere, one of which is wanted; none where that cannot be told */
    record Words(String about, String example, Function<Desk, Collection<String>> ids) { }

    /** The ids one of which is wanted, in the order in which they are declared. */
    Collection<String> ids(Desk desk) {
        return ids.apply(desk);
    }

    T from(Fields fields) {
        return getting.apply(fields);
    }

    public String name() {
        return name;
    }

    public Wanted<?> wanted() {
        return wanted;
    }

    public boolean must() {
        return presence.must();
    }

    /** The text that counts where the key is not written; null where nothing does. */
    public String unlessWritten() {
        return presence.unlessWritten();
    }

    /** One sentence for the reference. */
    public String about() {
        return about;
    }

    /** The value as an entry could have it, in YAML; empty where the keys inside have examples. */
    public String example() {
        return example;
    }
}
