package exergue.check.rules;

import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import java.util.List;

/** A photograph is printed and nobody is thanked for it. */
public final class PhotographWithoutCredit implements Rule {

    static final Code CODE = new Code("photograph-without-credit", Severity.WARNING,
            "A photograph has no credit",
            "The list of credits names for every picture who took or lent it, the author’s own among them.",
            """
                    photograph: {obverse: photographs/lk-1-obv.jpg, permission: not needed}
                    """,
            """
                    photograph: {obverse: photographs/lk-1-obv.jpg, permission: not needed, credit: the author}
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        return catalogue.coins().stream().filter(coin -> coin.photograph()
                        .filter(photograph -> photograph.credit().isEmpty()).isPresent())
                .flatMap(coin -> PhotographWithoutPermission.first(coin.photograph().orElseThrow())
                        .map(path -> Finding.of(CODE, path.place(), "photograph",
                                "The photograph “" + path + "” of coin " + coin.id() + " has no credit.",
                                "Write credit: and whom to thank, as printed; for a picture of your own, your name."))).toList();
    }
}
