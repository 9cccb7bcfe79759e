package exergue.model;

import java.util.List;

/** The parts in their order: names of parts the tool makes (title, imprint, contents, methods, catalogue, works) and chapter paths. */
public record BookPlan(List<Written<String>> front, List<Written<String>> body, List<Written<String>> back) {

    public BookPlan {
        front = List.copyOf(front);
        body = List.copyOf(body);
        back = List.copyOf(back);
    }
}
