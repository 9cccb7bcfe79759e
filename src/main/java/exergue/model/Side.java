package exergue.model;

import exergue.legend.Legend;
import java.util.Optional;

/** What is on one side. On a coin: only what differs from its type. @param retrograde the legend runs from right to left */
public record Side(Optional<Written<Legend>> legend, boolean retrograde, Optional<Phrase> description) {

    public static final Side BLANK = new Side(Optional.empty(), false, Optional.empty());

    public boolean isBlank() {
        return legend.isEmpty() && !retrograde && description.isEmpty();
    }
}
