package exergue.finding;

import java.util.List;
import java.util.Optional;

/**
 * One thing found in the source, as data. Printing it is the command line's business.
 *
 * @param code    what kind of fault
 * @param place   where it was written
 * @param path    where it is in the data, such as {@code measured.weight}; empty when the file is meant
 * @param what    what is wrong: quotes the value; full sentence
 * @param remedy  what to do about it: full sentence, offers the near miss if there is one
 * @param related other places that belong to it, such as the first of two equal keys
 * @param edit    a change that mends it and cannot harm, if there is one
 */
public record Finding(Code code, Place place, String path, String what, String remedy,
                      List<Related> related, Optional<SafeEdit> edit) implements Comparable<Finding> {

    public Finding {
        related = List.copyOf(related);
    }

    /** Another place that helps to understand a finding, and what is to be seen there. */
    public record Related(Place place, String what) { }

    /**
     * Replace the text at {@code place} (its whole length) with {@code text}.
     *
     * @param was what must stand there for that; empty where whatever stands there is replaced
     */
    public record SafeEdit(Place place, String was, String text) { }

    public static Finding of(Code code, Place place, String path, String what, String remedy) {
        return new Finding(code, place, path, what, remedy, List.of(), Optional.empty());
    }

    public Finding withRelated(Place other, String whatIsThere) {
        return new Finding(code, place, path, what, remedy, List.of(new Related(other, whatIsThere)), edit);
    }

    public Finding withEdit(String replacement) {
        return new Finding(code, place, path, what, remedy, related, Optional.of(new SafeEdit(place, "", replacement)));
    }

    /** @param exactly the part of the place that is replaced; @param was what stands there now */
    public Finding withEditAt(Place exactly, String was, String replacement) {
        return new Finding(code, place, path, what, remedy, related, Optional.of(new SafeEdit(exactly, was, replacement)));
    }

    /** The same with the weight that a house gives it. */
    public Finding as(Severity severity) {
        return new Finding(code.as(severity), place, path, what, remedy, related, edit);
    }

    public Severity severity() {
        return code.severity();
    }

    @Override
    public int compareTo(Finding other) {
        int byPlace = place.compareTo(other.place);
        if (byPlace != 0) {
            return byPlace;
        }
        int byCode = code.id().compareTo(other.code.id());
        return byCode != 0 ? byCode : what.compareTo(other.what);
    }
}
