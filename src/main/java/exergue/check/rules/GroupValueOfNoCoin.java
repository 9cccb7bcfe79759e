package exergue.check.rules;

import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.NearMiss;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.CoinField;
import exergue.model.CoinGroup;
import exergue.model.Type;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** A group of coins asks for a value that no coin of the catalogue has. */
public final class GroupValueOfNoCoin implements Rule {

    static final Code CODE = new Code("group-value-of-no-coin", Severity.WARNING,
            "A group asks for something that no coin is",
            "A value that is misspelt in a group of catalogue.yaml leaves its coins out of every table and chart without a word. Mints, "
                    + "rulers, types, metals, find-spots, collections and hands are named by their ids; the rest as the entries have it.",
            """
                    coins: {denomination: [drachms]}
                    """,
            """
                    coins: {denomination: [drachm]}
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        if (catalogue.groups().isEmpty()) {
            return List.of();
        }
        Map<CoinField, Set<String>> known = known(catalogue);
        List<Finding> faults = new ArrayList<>();
        for (CoinGroup group : catalogue.groups().values()) {
            group.coins().forEach((field, values) -> values.stream().filter(value -> !known.get(field).contains(value.value()))
                    .forEach(value -> faults.add(fault(group, field, value, known.get(field)))));
        }
        return faults;
    }

    private static Map<CoinField, Set<String>> known(Catalogue catalogue) {
        Map<String, Type> types = new HashMap<>();
        catalogue.types().forEach(type -> types.putIfAbsent(type.id().value(), type));
        Map<CoinField, Set<String>> known = new EnumMap<>(CoinField.class);
        for (CoinField field : CoinField.values()) {
            known.put(field, new TreeSet<>());
            for (Coin coin : catalogue.coins()) {
                Type type = types.get(coin.type().value());
                if (type != null) {
                    field.of(coin, type).ifPresent(known.get(field)::add);
                }
            }
        }
        return known;
    }

    private static Finding fault(CoinGroup group, CoinField field, Written<String> value, Set<String> known) {
        return Finding.of(CODE, value.place(), "groups." + group.id() + ".coins." + field.word(),
                "No coin has the " + field.word() + " “" + value + "”, which the group “" + group.id() + "” asks for.",
                NearMiss.of(value.value(), known).map(near -> "Did you mean “" + near + "”?")
                        .orElse("Write it as the entries have it" + (known.isEmpty() ? "; none of them says anything of this kind."
                                : ", for example “" + known.iterator().next() + "”.")));
    }
}
