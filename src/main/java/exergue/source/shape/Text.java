package exergue.source.shape;

import exergue.finding.Place;
import exergue.source.yaml.Scalar;
import exergue.source.yaml.Value;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * A value that is one piece of text.
 *
 * @param name       what the reference calls it
 * @param words      the only words allowed; empty where any text will do
 * @param pattern    regular expression for the JSON Schema; empty where any text will do
 * @param mayBeEmpty whether {@code ""} is a value here
 * @param conversion text to what it becomes; reports what is wrong with it
 * @param standIn    what stands in where it must be and is not
 */
public record Text<T>(String name, List<String> words, String pattern, boolean mayBeEmpty,
                      Conversion<T> conversion, BiFunction<Site, Place, T> standIn) implements Wanted<T> {

    /** Text to what it becomes. */
    @FunctionalInterface
    public interface Conversion<T> {
        Optional<T> convert(Scalar scalar, Site site);
    }

    public Text {
        words = List.copyOf(words);
    }

    @Override
    public Optional<T> bind(Value value, Site site) {
        if (value instanceof Scalar scalar) {
            return conversion.convert(scalar, site);
        }
        site.report(ShapeCodes.WRONG_SHAPE, value.place(),
                "“" + site.key() + "” wants " + name + ", and here stands " + value.name() + ".",
                value instanceof Value.Items
                        ? "Write one text, without the hyphens or square brackets of a list."
                        : "Write one text after the colon; if it begins with a brace, put it in quotes.");
        return Optional.empty();
    }

    @Override
    public T unlessWritten(String text, Site site, Place place) {
        return conversion.convert(Scalar.standIn(text, place), site)
                .orElseThrow(() -> new IllegalStateException("“" + text + "” is no " + name));
    }

    @Override
    public T standIn(Site site, Place place) {
        return standIn.apply(site, place);
    }
}
