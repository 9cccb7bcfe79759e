package exergue.check.rules;

import exergue.check.Doubles;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Reference;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Two coins are both said to be the one that a work has under a number. */
public final class ThisCoinClaimedTwice implements Rule {

    static final Code CODE = new Code("this-coin-claimed-twice", Severity.WARNING,
            "Two coins are said to be one coin of another work",
            "“this coin” says that the very piece is published there. Only one of the two can be it: the other is of the same type or "
                    + "from the same dies, or the number is a slip. A coin entered twice shows itself here as well.",
            """
                    # coins/lk-1.yaml and coins/lk-2.yaml
                    references:
                      - {work: hallam-1931, number: '12', relation: this coin}
                    """,
            """
                    # coins/lk-2.yaml
                    references:
                      - {work: hallam-1931, number: '12', relation: same dies}
                    """);

    /** A page, a volume or a whole plate can have many coins. */
    private static final Pattern MANY = Pattern.compile("(?iu)(pp?|pages?|ss?|fols?|vols?|bd|t|cols?)\\.?\\s?[0-9].*"
            + "|(pls?|plates?|planches?|taf|tav)\\.?\\s?[0-9IVXLC]+");

    private record Claim(Coin coin, Reference reference) { }

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Claim> claims = new ArrayList<>();
        for (Coin coin : catalogue.coins()) {
            coin.references().stream().filter(reference -> reference.relation() == Reference.Relation.THIS_COIN)
                    .forEach(reference -> claims.add(new Claim(coin, reference)));
        }
        return Doubles.among(claims, ThisCoinClaimedTwice::markOf).stream()
                .filter(pair -> !pair.thing().coin().id().value().equals(pair.firstThing().coin().id().value()))
                .map(ThisCoinClaimedTwice::fault).toList();
    }

    private static Optional<Doubles.Mark> markOf(Claim claim) {
        String number = claim.reference().number().value().strip().toLowerCase(Locale.ROOT);
        return number.isEmpty() || MANY.matcher(number).matches() ? Optional.empty()
                : Optional.of(new Doubles.Mark(claim.reference().work().value() + " " + number, claim.reference().number().place()));
    }

    private static Finding fault(Doubles.Pair<Claim> pair) {
        Reference reference = pair.thing().reference();
        return Finding.of(CODE, pair.mark().place(), "references", "“" + reference.work() + "”, number “" + reference.number()
                + "”, is said to be this coin, and “" + pair.firstThing().coin().id() + "” says the same of itself.",
                "Mend the number, or write “same type” or “same dies” where it is another coin.")
                .withRelated(pair.first().place(), "the other coin");
    }
}
