package exergue.check.rules;

import exergue.check.Rule;
import exergue.check.UnknownId;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import java.util.ArrayList;
import java.util.List;

/** A year on a coin is of an era the house style does not know. */
public final class UnknownEra implements Rule {

    static final Code CODE = new Code("unknown-era", Severity.ERROR, "A year is of an era the house style does not know",
            "A year of an era is printed with the year BC or AD it was; for that the house style says when the era began.",
            """
                    # types/owl-drachm.yaml
                    era-date: {era: ardain, year: 35}
                    """,
            """
                    # types/owl-drachm.yaml
                    era-date: {era: ardian, year: 35}
                    # house-style.yaml
                    eras:
                      ardian: {sign: year, year-one: -0311}
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        UnknownId unknown = new UnknownId(CODE, "era", "house-style.yaml", catalogue.style().eras().keySet());
        List<Finding> faults = new ArrayList<>();
        catalogue.types().forEach(type -> type.eraDate()
                .ifPresent(date -> faults.addAll(unknown.unlessDeclared(date.era(), "era-date.era"))));
        catalogue.coins().forEach(coin -> coin.eraDate()
                .ifPresent(date -> faults.addAll(unknown.unlessDeclared(date.era(), "era-date.era"))));
        return faults;
    }
}
