package exergue.model;

import java.util.Optional;

/** What is on one side. On a coin: only what differs from its type. */
public record Side(Optional<Written<String>> legend, Optional<Phrase> description) {

    public static final Side BLANK = new Side(Optional.empty(), Optional.empty());

    public boolean isBlank() {
        return legend.isEmpty() && description.isEmpty();
    }
}
