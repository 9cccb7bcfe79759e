package exergue.model;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What the editor wants of the entries beyond what every catalogue needs.
 *
 * @param treatments of kinds of findings, in the order of the file
 * @param wordings   words the house has one for, in the order of the file
 * @param ofCoins    what an entry must have, by the kind of coin
 * @param ofTypes    what the description of a type must have
 * @param excused    what is found in other files than those of coins and types, and right as it is
 */
public record HouseRules(List<Treated> treatments, List<Wording> wordings, Map<CoinKind, List<CoinPart>> ofCoins,
                         List<TypePart> ofTypes, List<ExcusedIn> excused) {

    /** Those of a house that has decided nothing. */
    public static final HouseRules NONE = new HouseRules(List.of(), List.of(), Map.of(), List.of(), List.of());

    public HouseRules {
        treatments = List.copyOf(treatments);
        wordings = List.copyOf(wordings);
        ofCoins = ofCoins.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(ofCoins));
        ofTypes = List.copyOf(ofTypes);
        excused = List.copyOf(excused);
    }

    /** @param finding the code, as written */
    public record Treated(Written<String> finding, Treatment treatment) { }

    /** @param write the word of the house; @param not words it does not want for the same thing */
    public record Wording(Written<String> write, List<Written<String>> not) {
        public Wording {
            not = List.copyOf(not);
        }
    }
}
