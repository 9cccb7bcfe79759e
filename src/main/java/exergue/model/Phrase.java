package exergue.model;

import exergue.finding.Place;
import java.util.List;

/** One line of prose in an entry: a description, a note. */
public record Phrase(List<Inline> runs, Place place) {

    public Phrase {
        runs = List.copyOf(runs);
    }

    public String plain() {
        return Inline.plain(runs);
    }
}
