package exergue.source.shape;

import exergue.finding.Place;
import exergue.model.Written;
import exergue.source.yaml.Scalar;
import exergue.source.yaml.Value;
import java.util.Optional;
import java.util.function.Function;

/** A plain text, or a block with more to say; most authors write the text. */
public record TextOr<T>(Text<Written<String>> text, Function<Written<String>, T> alone, Block<T> block) implements Wanted<T> {

    @Override
    public String name() {
        return text.name() + ", or block";
    }

    @Override
    public Optional<T> bind(Value value, Site site) {
        return value instanceof Scalar ? text.bind(value, site).map(alone) : block.bind(value, site);
    }

    @Override
    public T unlessWritten(String words, Site site, Place place) {
        return alone.apply(text.unlessWritten(words, site, place));
    }

    @Override
    public T standIn(Site site, Place place) {
        return alone.apply(text.standIn(site, place));
    }
}
