package exergue.check.rules;

import exergue.check.CoinOfType;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.CoinKind;
import exergue.model.CoinPart;
import exergue.model.HouseRules;
import exergue.model.Type;
import exergue.model.TypePart;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** An entry has not what the house wants of its kind. */
public final class RequiredByHouse implements Rule {

    static final Code CODE = new Code("required-by-house", Severity.WARNING, "An entry lacks what the house wants of it",
            "What “required” in the house style lists is wanted of every entry of that kind, so that the book says the same of all. "
                    + "A note or a dash in one place of fifty looks like an oversight even where it is none.",
            """
                    # house-style.yaml has: required: {held-coins: [collection-number]}
                    collection: {id: museum}
                    """,
            """
                    collection: {id: museum, number: "1931.14"}
                    """);

    private static final String REMEDY = "Add it. If it cannot be known, say so in the entry: excused: [{finding: " + CODE.id()
            + ", because: …}].";

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        HouseRules rules = catalogue.style().rules();
        List<Finding> faults = new ArrayList<>();
        for (CoinOfType pair : CoinOfType.all(catalogue)) {
            for (Map.Entry<CoinKind, List<CoinPart>> wanted : rules.ofCoins().entrySet()) {
                if (wanted.getKey().has(pair.coin(), pair.type())) {
                    wanted.getValue().stream().filter(part -> !part.isIn(pair.coin()))
                            .forEach(part -> faults.add(Finding.of(CODE, pair.coin().id().place(), part.word(),
                                    "The house wants “" + part.word() + "” of " + wanted.getKey().words() + ", and “" + pair.coin().id()
                                            + "” has none.", REMEDY)));
                }
            }
        }
        for (Type type : catalogue.types()) {
            for (TypePart part : rules.ofTypes()) {
                if (!part.isIn(type)) {
                    faults.add(Finding.of(CODE, type.id().place(), part.word(), "The house wants “" + part.word()
                            + "” of every type, and “" + type.id() + "” has none.", REMEDY));
                }
            }
        }
        return faults;
    }
}
