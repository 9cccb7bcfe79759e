package exergue.edition.methods;

import exergue.measure.Kind;
import exergue.measure.Reading;
import exergue.model.Written;
import java.util.List;
import java.util.Optional;

/**
 * Diameters that are more or other than one line across a round flan.
 *
 * @param twoWay  square and rectangular coins with figures both ways
 * @param oneWay  square and rectangular coins with one figure only
 * @param across  coins of any other shape with figures in two directions
 * @param ranges  coins whose diameter is a least and a greatest
 * @param means   what a figure means where the entry has to say so, the commonest first
 */
public record FlanTally(int twoWay, int oneWay, int across, int ranges, List<Tally.Count<String>> means) {
    public FlanTally {
        means = List.copyOf(means);
    }

    /** True where square or rectangular coins have diameters, so that the statement has spoken of them. */
    public boolean anySquare() {
        return twoWay + oneWay > 0;
    }

    static FlanTally of(List<Counted> coins) {
        int twoWay = 0;
        int oneWay = 0;
        int across = 0;
        int ranges = 0;
        Counts<String> means = new Counts<>(String::compareTo);
        for (Counted coin : coins) {
            Optional<Reading.Read> diameter = coin.figure(Kind.DIAMETER);
            if (diameter.isEmpty()) {
                continue;
            }
            Reading.Form form = diameter.get().form();
            if (coin.type().shape().value().wantsTwoDiameters()) {
                twoWay += form == Reading.Form.TWO_WAY ? 1 : 0;
                oneWay += form == Reading.Form.SINGLE ? 1 : 0;
            } else {
                across += form == Reading.Form.TWO_WAY ? 1 : 0;
            }
            ranges += form == Reading.Form.RANGE ? 1 : 0;
            coin.coin().diameterMeans().or(() -> coin.type().diameterMeans()).map(Written::value)
                    .ifPresent(means::add);
        }
        return new FlanTally(twoWay, oneWay, across, ranges, means.commonestFirst());
    }
}
