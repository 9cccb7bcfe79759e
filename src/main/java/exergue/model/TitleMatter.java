package exergue.model;

import java.util.List;
import java.util.Optional;

/** What stands on the title page and its back. @param notice a sentence for the title page; @param imprint lines for its back */
public record TitleMatter(Written<String> title, Optional<Written<String>> subtitle, List<Written<String>> authors,
                          Optional<Written<String>> place, Optional<Written<String>> publisher,
                          Optional<Written<String>> year, Optional<Written<String>> series,
                          Optional<Phrase> notice, List<Phrase> imprint, Written<String> language) {

    public TitleMatter {
        authors = List.copyOf(authors);
        imprint = List.copyOf(imprint);
    }
}
