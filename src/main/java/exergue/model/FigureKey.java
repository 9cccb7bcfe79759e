package exergue.model;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a block of figures in a chapter can say, each on a line of its own. */
public enum FigureKey {

    /** What is shown: "weights". */
    SHOW("show"),
    /** Ids of the groups of which it is shown, with commas between them. */
    OF("of"),
    /** The form: "table", "histogram". */
    AS("as"),
    /** Steps of a frequency table or histogram: "0.05 g". */
    STEPS("steps");

    private final String word;

    FigureKey(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    public static Optional<FigureKey> named(String word) {
        return Arrays.stream(values()).filter(key -> key.word.equals(word)).findFirst();
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(FigureKey::word).toList();
    }
}
