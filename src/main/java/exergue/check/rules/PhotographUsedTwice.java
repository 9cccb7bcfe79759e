package exergue.check.rules;

import exergue.check.Doubles;
import exergue.check.Rule;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** One photograph is given for two coins. */
public final class PhotographUsedTwice implements Rule {

    static final Code CODE = new Code("photograph-used-twice", Severity.WARNING, "One photograph is given for two coins",
            "A photograph shows one coin. Either an entry names another coin’s photograph, or one coin is catalogued twice.",
            """
                    # coins/lk-0042.yaml and coins/lk-0043.yaml
                    photograph: {obverse: photographs/lk-0042-obv.jpg}
                    """,
            """
                    # coins/lk-0043.yaml
                    photograph: {obverse: photographs/lk-0043-obv.jpg}
                    """);

    private record Shown(Coin coin, Written<String> file) { }

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        List<Shown> shown = new ArrayList<>();
        for (Coin coin : catalogue.coins()) {
            coin.photograph().ifPresent(photo -> Stream.of(photo.obverse(), photo.reverse()).flatMap(Optional::stream)
                    .forEach(file -> shown.add(new Shown(coin, file))));
        }
        return Doubles.among(shown, one -> Optional.of(new Doubles.Mark(one.file().value(), one.file().place()))).stream()
                .filter(pair -> pair.thing().coin() != pair.firstThing().coin())
                .map(PhotographUsedTwice::fault).toList();
    }

    private static Finding fault(Doubles.Pair<Shown> pair) {
        return Finding.of(CODE, pair.mark().place(), "photograph", "The photograph “" + pair.mark().text() + "” is given for “"
                + pair.firstThing().coin().id() + "” and for “" + pair.thing().coin().id() + "”.",
                "Look which coin it shows, and name the other’s own photograph. If both entries are of one coin, delete one of them.")
                .withRelated(pair.first().place(), "the first coin with this photograph");
    }
}
