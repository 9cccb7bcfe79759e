package exergue.edition.methods;

import exergue.measure.Alloy;
import exergue.measure.Kind;
import exergue.measure.Reading;
import exergue.model.Written;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Printed densities.
 *
 * @param weighed worked out here from weighings in air and in water
 * @param given   as their source gives them
 * @param alloys  for which a fineness is printed, the commonest first
 * @param spread  printed finenesses whose least and most differ in whole per cents
 */
public record DensityTally(int weighed, int given, List<Tally.Count<Alloy>> alloys, int spread) {
    public DensityTally {
        alloys = List.copyOf(alloys);
    }

    static DensityTally of(List<Counted> coins) {
        int weighed = 0;
        int given = 0;
        int spread = 0;
        Counts<Alloy> alloys = new Counts<>(Comparator.comparing(Alloy::id));
        for (Counted coin : coins) {
            Optional<Reading.Read> density = coin.figure(Kind.DENSITY);
            if (density.isPresent()) {
                weighed += density.get().weighedInWater() ? 1 : 0;
                given += density.get().weighedInWater() ? 0 : 1;
                Optional<Alloy> alloy = coin.type().alloy().map(Written::value);
                Optional<Alloy.Fineness> fineness = alloy.flatMap(metals -> metals.fineness(density.get().first()));
                if (fineness.isPresent()) {
                    alloys.add(alloy.get());
                    spread += fineness.get().isSpread() ? 1 : 0;
                }
            }
        }
        return new DensityTally(weighed, given, alloys.commonestFirst(), spread);
    }
}
