package exergue.check.rules;

import exergue.check.CoinOfType;
import exergue.check.Rule;
import exergue.dating.DatePrinter;
import exergue.dating.Dating;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.FindSpot;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A coin is later than the closing of the find it is said to be from. Common practice, no source: the latest coin dates a hoard. */
public final class HoardClosedBeforeCoin implements Rule {

    static final Code CODE = new Code("hoard-closed-before-coin", Severity.WARNING,
            "A coin is later than the closing of its find",
            "A hoard is not closed before its latest coin was struck. Either the coin is no part of it, or its type, the date of that or "
                    + "the closing date is wrong.",
            """
                    # find-spots.yaml: valley: {name: The valley, kind: hoard, closed: -0274~}
                    # types/owl.yaml: date: -0254
                    # coins/lk-0042.yaml
                    type: owl
                    find: {spot: valley, number: '12'}
                    """,
            """
                    # find-spots.yaml
                    valley: {name: The valley, kind: hoard, closed: -0253~}
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        for (CoinOfType pair : CoinOfType.all(catalogue)) {
            Optional<Written<Dating>> struck = pair.type().date();
            Optional<Coin.Find> find = pair.coin().find();
            Optional<Written<Dating>> closed = find.flatMap(one -> Optional.ofNullable(catalogue.findSpots().get(one.spot().value())))
                    .flatMap(FindSpot::closed);
            if (struck.isPresent() && closed.isPresent() && isLater(struck.get().value(), closed.get().value())) {
                faults.add(fault(pair, find.get(), closed.get(), catalogue));
            }
        }
        return faults;
    }

    private static boolean isLater(Dating struck, Dating closed) {
        return struck.earliest().orElse(Integer.MIN_VALUE) > closed.latest().orElse(Integer.MAX_VALUE);
    }

    private static Finding fault(CoinOfType pair, Coin.Find find, Written<Dating> closed, Catalogue catalogue) {
        Written<Dating> struck = pair.type().date().orElseThrow();
        return Finding.of(CODE, find.spot().place(), "find.spot", "The find “" + find.spot() + "” was closed "
                        + DatePrinter.print(closed.value(), catalogue.style().dates()) + ", but “" + pair.coin().id() + "” is of the type “"
                        + pair.type().id() + "”, dated " + DatePrinter.print(struck.value(), catalogue.style().dates()) + ".",
                "Look at the type of the coin and at the records of the find; else mend the date of the type, or “closed” in find-spots.yaml.")
                .withRelated(closed.place(), "“" + closed.value().edtf() + "”, the closing date");
    }
}
