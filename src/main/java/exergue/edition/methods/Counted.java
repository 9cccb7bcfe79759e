package exergue.edition.methods;

import exergue.measure.Kind;
import exergue.measure.Reading;
import exergue.model.Coin;
import exergue.model.ReadingChoice;
import exergue.model.ReadingChoice.Chosen;
import exergue.model.Type;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A coin as the tally sees it.
 *
 * @param number catalogue number, as printed
 * @param chosen what is printed of each kind in the house's measurement line
 */
public record Counted(Coin coin, Type type, String number, Map<Kind, Chosen> chosen) {

    public Counted {
        chosen = Collections.unmodifiableMap(new EnumMap<>(chosen));
    }

    public static Counted of(Coin coin, Type type, String number, ReadingChoice choice, List<Kind> kinds) {
        Map<Kind, Chosen> chosen = new EnumMap<>(Kind.class);
        kinds.forEach(kind -> chosen.put(kind, choice.choose(coin, type, kind)));
        return new Counted(coin, type, number, chosen);
    }

    /** The figure printed of this kind, if one is. */
    public Optional<Reading.Read> figure(Kind kind) {
        return Optional.ofNullable(chosen.get(kind)).flatMap(Chosen::figure);
    }
}
