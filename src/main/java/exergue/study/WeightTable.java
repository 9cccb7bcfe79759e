package exergue.study;

import exergue.measure.Kind;
import exergue.measure.Reading;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.ReadingChoice;
import exergue.model.Type;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Weights by type, in the order of the catalogue's types. */
public record WeightTable(List<Row> rows) {

    public WeightTable {
        rows = List.copyOf(rows);
    }

    /**
     * @param type    its id
     * @param summary of the weights that count; empty where none does
     * @param leftOut coins with a weight that does not count: for damage, by the author’s word, or since it says only
     *                that the true one is less or more
     */
    public record Row(String type, Optional<Summary> summary, int leftOut) { }

    public static WeightTable of(Catalogue catalogue) {
        Map<String, List<Coin>> coins = new HashMap<>();
        catalogue.coins().forEach(coin -> coins.computeIfAbsent(coin.type().value(), any -> new ArrayList<>()).add(coin));
        ReadingChoice choice = ReadingChoice.of(catalogue.style());
        return new WeightTable(catalogue.types().stream()
                .map(type -> row(type, coins.getOrDefault(type.id().value(), List.of()), choice)).toList());
    }

    private static Row row(Type type, List<Coin> coins, ReadingChoice choice) {
        List<Double> weights = new ArrayList<>();
        int leftOut = 0;
        for (Coin coin : coins) {
            Optional<Reading.Read> weight = choice.choose(coin, type, Kind.WEIGHT).figure();
            if (weight.isPresent()) {
                if (coin.weightInStatistics() && Figure.isExact(weight.get())) {
                    weights.add(Figure.of(weight.get()));
                } else {
                    leftOut++;
                }
            }
        }
        return new Row(type.id().value(), Summary.of(weights), leftOut);
    }
}
