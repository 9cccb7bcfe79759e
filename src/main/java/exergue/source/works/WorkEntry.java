package exergue.source.works;

import exergue.finding.Place;
import exergue.model.Written;
import java.util.Optional;

/** What works.yaml says under one id: a whole work, or only the sign of one from works.json or works.bib. */
public record WorkEntry(Written<String> id, Optional<Written<String>> sign, boolean standard, Printed printed, Place place) {

    /** The keys with which the author composes a reference. */
    public record Printed(Optional<Written<String>> authors, Optional<Written<String>> year,
                          Optional<Written<String>> title, Optional<Written<String>> in, Optional<Written<String>> rest) {

        /** The first of them that is written. */
        Optional<Written<String>> first() {
            return title.or(() -> authors).or(() -> year).or(() -> in).or(() -> rest);
        }
    }
}
