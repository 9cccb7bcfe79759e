package exergue.edition.methods.english;

import exergue.edition.methods.StatedCountReader;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How English states a count: a number straight before "coins", "weights", "diameters" or "die-axes". */
final class StatedCounts {

    static final StatedCountReader READER = new StatedCountReader(1, List.of("one", "two", "three", "four", "five", "six",
            "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen",
            "seventeen", "eighteen", "nineteen", "twenty"), ",", nouns());

    private StatedCounts() { }

    private static Map<String, String> nouns() {
        Map<String, String> nouns = new LinkedHashMap<>();
        nouns.put("coins?|specimens?", "coins");
        nouns.put("weights?", "weights");
        nouns.put("diameters?", "diameters");
        nouns.put("(?:die-)?ax[ie]s", "die-axes");
        return nouns;
    }
}
