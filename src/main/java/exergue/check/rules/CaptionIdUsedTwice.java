package exergue.check.rules;

import exergue.check.Captions;
import exergue.check.Doubles;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Caption;
import exergue.model.Catalogue;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Two tables or two figures have one id. */
public final class CaptionIdUsedTwice implements Rule {

    static final Code CODE = new Code("caption-id-used-twice", Severity.ERROR,
            "Two tables or two figures have the same id",
            "Texts refer to a table or figure by its id. If two have the same one, the number printed may be that of the "
                    + "wrong one.",
            """
                    Table [weights]: Weights of the drachms

                    Table [weights]: Weights of the obols
                    """,
            """
                    Table [weights]: Weights of the drachms

                    Table [weights-obols]: Weights of the obols
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        for (Caption.Kind kind : Caption.Kind.values()) {
            Doubles.among(Captions.ids(kind, catalogue), id -> Optional.of(new Doubles.Mark(id.value(), id.place())))
                    .forEach(pair -> faults.add(fault(kind, pair)));
        }
        return faults;
    }

    private static Finding fault(Caption.Kind kind, Doubles.Pair<Written<String>> pair) {
        return Finding.of(CODE, pair.mark().place(), "", "Two " + kind.word() + "s have the id “" + pair.mark().text() + "”.",
                "Give this one another id, and correct the references that mean it: [" + kind.word() + ":…].")
                .withRelated(pair.first().place(), "the first " + kind.word() + " with this id");
    }
}
