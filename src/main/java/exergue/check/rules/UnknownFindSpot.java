package exergue.check.rules;

import exergue.check.Rule;
import exergue.check.UnknownId;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import java.util.ArrayList;
import java.util.List;

/** A coin was found at a spot that is not declared. */
public final class UnknownFindSpot implements Rule {

    static final Code CODE = new Code("unknown-find-spot", Severity.ERROR,
            "A coin names a find-spot that is not declared",
            "find-spots.yaml says under which coarse name a find-spot may be printed. A spot that is not "
                    + "declared there cannot be printed safely.",
            """
                    find: {spot: lower-towm}
                    """,
            """
                    find: {spot: lower-town}
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        UnknownId unknown = new UnknownId(CODE, "find-spot", "find-spots.yaml", catalogue.findSpots().keySet());
        List<Finding> faults = new ArrayList<>();
        catalogue.coins().forEach(coin -> coin.find().ifPresent(
                find -> faults.addAll(unknown.unlessDeclared(find.spot(), "find.spot"))));
        return faults;
    }
}
