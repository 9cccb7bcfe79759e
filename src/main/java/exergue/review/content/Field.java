package exergue.review.content;

import exergue.model.NaturalOrder;
import java.util.Comparator;

/**
 * One thing that an entry can say.
 *
 * @param position where the model has it, for sorting: the weight before the diameter
 * @param path     names of the model on the way to it, joined by full stops: {@code dies.obverse}, {@code references}
 * @param of       which one, where there can be several: the id of a work; empty where there is only one
 */
public record Field(String position, String path, String of) implements Comparable<Field> {

    private static final Comparator<Field> ORDER = Comparator.comparing(Field::position).thenComparing(Field::path)
            .thenComparing(Field::of, NaturalOrder.INSTANCE);

    public Field(String path) {
        this("", path, "");
    }

    /** The parts of something, or several of it, are reached from here. */
    Field below(int nth, String name) {
        return new Field(position + (char) ('a' + nth), name.isEmpty() ? path : path.isEmpty() ? name : path + "." + name, of);
    }

    Field one(String key) {
        return new Field(position, path, of.isEmpty() ? key : of + " " + key);
    }

    @Override
    public int compareTo(Field other) {
        return ORDER.compare(this, other);
    }

    /** {@code references[hallam-1931]} */
    @Override
    public String toString() {
        return of.isEmpty() ? path : path + "[" + of + "]";
    }
}
