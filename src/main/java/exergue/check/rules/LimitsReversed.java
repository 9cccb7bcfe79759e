package exergue.check.rules;

import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.measure.Kind;
import exergue.measure.Reading;
import exergue.model.Catalogue;
import exergue.model.Limits;
import exergue.model.Type;
import java.util.ArrayList;
import java.util.List;

/** The declared limits of a type are the wrong way round. */
public final class LimitsReversed implements Rule {

    static final Code CODE = new Code("limits-reversed", Severity.WARNING,
            "The least that is expected is more than the greatest",
            "Limits the wrong way round hold no coin, so that every coin of the type would be reported.",
            """
                    limits: {weight: {from: 4.4 g, to: 3.6 g}}
                    """,
            """
                    limits: {weight: {from: 3.6 g, to: 4.4 g}}
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        for (Type type : catalogue.types()) {
            type.limits().ifPresent(limits -> limits.spans().forEach((kind, span) -> {
                if (reversed(span)) {
                    faults.add(fault(kind, span));
                }
            }));
        }
        return faults;
    }

    private static boolean reversed(Limits.Span span) {
        return span.from().value() instanceof Reading.Read from && span.to().value() instanceof Reading.Read to
                && from.first().value().compareTo(to.first().value()) > 0;
    }

    private static Finding fault(Kind kind, Limits.Span span) {
        String from = span.from().value().recorded();
        String to = span.to().value().recorded();
        return Finding.of(CODE, span.from().place(), "limits." + kind.word() + ".from",
                "The " + kind.word() + " is expected from “" + from + "” to “" + to + "”, which holds nothing.",
                "Exchange the two: from: " + to + ", to: " + from + ".")
                .withRelated(span.to().place(), "the greatest that is expected");
    }
}
