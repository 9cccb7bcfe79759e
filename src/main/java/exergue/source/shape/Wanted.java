package exergue.source.shape;

import exergue.finding.Place;
import exergue.source.yaml.Value;
import java.util.Optional;

/**
 * What is wanted as the value of a key, and what it becomes. One description serves three: reading a value,
 * the reference page and the JSON Schema.
 *
 * @param <T> what the value becomes
 */
public sealed interface Wanted<T> permits Text, TextOr, ListOf, MapOf, Block {

    /** What the reference calls it: "words", "list of words". */
    String name();

    /** The value as the trade's record; empty where it cannot be used, which has been reported then. */
    Optional<T> bind(Value value, Site site);

    /** What the text would become if it stood in the file: for values that a key has unless written. */
    T unlessWritten(String text, Site site, Place place);

    /** What stands in, without a word, where a value that must be there is not, so that reading can go on. */
    T standIn(Site site, Place place);
}
