package exergue.model;

import java.util.List;
import java.util.stream.Stream;

/**
 * The parts in their order: names of parts the tool makes (title, imprint, contents, lists, methods, catalogue, plates,
 * finds, works, abbreviations, concordances, indexes, credits) and paths of chapters.
 *
 * @param onRight which of the body and the back open on a right-hand page; the first of the body does without being named
 */
public record BookPlan(List<Written<String>> front, List<Written<String>> body, List<Written<String>> back,
                       List<Written<String>> onRight) {

    public BookPlan {
        front = List.copyOf(front);
        body = List.copyOf(body);
        back = List.copyOf(back);
        onRight = List.copyOf(onRight);
    }

    /** Whether the book has a part of this name. */
    public boolean has(String part) {
        return Stream.of(front, body, back).flatMap(List::stream).anyMatch(name -> name.value().equals(part));
    }
}
