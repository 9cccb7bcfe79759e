package exergue.source.shape;

import exergue.finding.Place;
import exergue.source.yaml.Scalar;
import exergue.source.yaml.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Several values of one sort, in the author's order. */
public record ListOf<T>(Wanted<T> member) implements Wanted<List<T>> {

    @Override
    public String name() {
        return "list of " + member.name();
    }

    @Override
    public Optional<List<T>> bind(Value value, Site site) {
        if (!(value instanceof Value.Items items)) {
            site.report(ShapeCodes.WRONG_SHAPE, value.place(),
                    "“" + site.key() + "” wants a list, and here stands " + value.name() + ".",
                    value instanceof Scalar s && s.plain() ? "Put it in square brackets: [" + s.text() + "]."
                            : "Begin each member on a line of its own with a hyphen and a space.");
            return Optional.empty();
        }
        List<T> bound = new ArrayList<>();
        int number = 0;
        for (Value one : items.values()) {
            Site here = site.member(++number);
            if (one instanceof Scalar s && s.isNothing()) {
                here.report(ShapeCodes.EMPTY_VALUE, s.place(), "Member " + number + " of “" + site.key() + "” is empty.",
                        "Write it, or delete the hyphen or comma.");
            } else {
                member.bind(one, here).ifPresent(bound::add);
            }
        }
        return Optional.of(bound);
    }

    @Override
    public List<T> unlessWritten(String text, Site site, Place place) {
        List<T> bound = new ArrayList<>();
        for (String one : text.isEmpty() ? new String[0] : text.split(", ")) {
            bound.add(member.unlessWritten(one, site, place));
        }
        return bound;
    }

    @Override
    public List<T> standIn(Site site, Place place) {
        return List.of();
    }
}
