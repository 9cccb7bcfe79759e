package exergue.check.rules;

import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Damage;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** A coin lists one damage twice. */
public final class DamageListedTwice implements Rule {

    static final Code CODE = new Code("damage-listed-twice", Severity.WARNING,
            "The same damage is listed twice",
            "One of the two is probably meant to be something else, and that would be lost.",
            """
                    damage: [chipped, chipped]
                    """,
            """
                    damage: [chipped, pierced]
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        for (Coin coin : catalogue.coins()) {
            Map<Damage, Place> seen = new EnumMap<>(Damage.class);
            for (Written<Damage> damage : coin.damage()) {
                Place first = seen.putIfAbsent(damage.value(), damage.place());
                if (first != null) {
                    faults.add(Finding.of(CODE, damage.place(), "damage",
                            "The damage “" + damage.value().word() + "” is listed twice.",
                            "Delete one of the two, or put in its place what was meant.")
                            .withRelated(first, "first listed here"));
                }
            }
        }
        return faults;
    }
}
