package exergue.check.rules;

import exergue.check.Doubles;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Reference;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** An entry cites one number of one work twice. */
public final class ReferenceGivenTwice implements Rule {

    static final Code CODE = new Code("reference-given-twice", Severity.WARNING, "An entry gives one reference twice",
            "The reference is printed twice, and a concordance lists the entry twice under the number.",
            """
                    references:
                      - {work: hallam-1931, number: '12', relation: this coin}
                      - {work: hallam-1931, number: '12', relation: same type}
                    """,
            """
                    references:
                      - {work: hallam-1931, number: '12', relation: this coin}
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Finding> faults = new ArrayList<>();
        Stream.concat(catalogue.types().stream().map(type -> type.references()), catalogue.coins().stream().map(coin -> coin.references()))
                .filter(references -> references.size() > 1)
                .forEach(references -> Doubles.among(references, ReferenceGivenTwice::markOf)
                        .forEach(pair -> faults.add(fault(pair))));
        return faults;
    }

    private static Optional<Doubles.Mark> markOf(Reference reference) {
        String number = reference.number().value().strip().toLowerCase(Locale.ROOT);
        return number.isEmpty() ? Optional.empty()
                : Optional.of(new Doubles.Mark(reference.work().value() + " " + number, reference.number().place()));
    }

    private static Finding fault(Doubles.Pair<Reference> pair) {
        return Finding.of(CODE, pair.mark().place(), "references", "“" + pair.thing().work() + "”, number “" + pair.thing().number()
                + "”, is given twice in this entry.",
                "Keep the reference that says more, and delete the other; or mend the number of one of them.")
                .withRelated(pair.first().place(), "the first");
    }
}
