package exergue.source;

import exergue.finding.Finding;
import exergue.measure.GrAmbiguity;
import exergue.measure.Kind;
import exergue.measure.ReadingFault;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Measurement;
import exergue.source.keys.Readings;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Which of the two readings of {@code gr} is the likelier, said once all coins and types are read. The reading stays
 * refused: the author decides.
 */
final class LikelierGr {

    private record Where(String file, String path) { }

    private final Map<Where, String> sentences = new HashMap<>();

    private LikelierGr() { }

    static LikelierGr in(Catalogue catalogue) {
        LikelierGr likelier = new LikelierGr();
        UsualWeights usual = new UsualWeights(catalogue);
        for (Coin coin : catalogue.coins()) {
            String file = coin.place().file();
            coin.measured().ifPresent(main -> likelier.weigh(main, new Where(file, "measured.weight"), coin, usual));
            for (int i = 0; i < coin.alsoMeasured().size(); i++) {
                likelier.weigh(coin.alsoMeasured().get(i), new Where(file, "also-measured[" + (i + 1) + "].weight"), coin, usual);
            }
        }
        return likelier;
    }

    /** The same finding; one about {@code gr} says as well which reading is the likelier. */
    Finding saidOf(Finding finding) {
        String sentence = sentences.get(new Where(finding.place().file(), finding.path()));
        if (sentence == null || !finding.code().equals(Readings.code(ReadingFault.GR_NOT_SAID))) {
            return finding;
        }
        return new Finding(finding.code(), finding.place(), finding.path(), finding.what() + " " + sentence,
                finding.remedy(), finding.related(), finding.edit());
    }

    private void weigh(Measurement measurement, Where where, Coin coin, UsualWeights usual) {
        Optional.ofNullable(measurement.unread().get(Kind.WEIGHT))
                .flatMap(text -> GrAmbiguity.in(text.value(), measurement.convention()))
                .ifPresent(both -> sentences.put(where,
                        usual.of(coin).map(weight -> weight.verdict(both)).orElse(
                                "Nothing here says which is the likelier: neither limits nor other weights are known of its type.")));
    }
}
