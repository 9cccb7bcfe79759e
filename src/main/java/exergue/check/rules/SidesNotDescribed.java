package exergue.check.rules;

import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import java.util.List;

/** Both sides of a type are without legend and description. */
public final class SidesNotDescribed implements Rule {

    static final Code CODE = new Code("sides-not-described", Severity.WARNING,
            "A type is described on neither side",
            "A type without legend and description tells the reader nothing that would let him recognise a "
                    + "coin of it.",
            """
                    id: owl-drachm
                    denomination: drachm
                    """,
            """
                    id: owl-drachm
                    denomination: drachm
                    obverse: {description: Head of a nymph right}
                    reverse: {legend: ΛΑΚ, description: Owl standing left}
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        return catalogue.types().stream()
                .filter(type -> type.obverse().isBlank() && type.reverse().isBlank())
                .map(type -> Finding.of(CODE, type.id().place(), "obverse",
                        "The type “" + type.id() + "” has neither an obverse nor a reverse.",
                        "Describe both sides under “obverse” and “reverse”; of a uniface type, the side that bears "
                                + "something."))
                .toList();
    }
}
