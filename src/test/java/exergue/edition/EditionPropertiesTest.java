package exergue.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Type;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class EditionPropertiesTest {

    /** Some types and coins drawn from a seed; the same seed gives the same catalogue. */
    private static Catalogue catalogue(long seed, int coins) {
        Random random = new Random(seed);
        CatalogueBuilder catalogue = new CatalogueBuilder().convention(CatalogueBuilder.old());
        List.of("t1", "t2", "t10").forEach(catalogue::type);
        catalogue.type("u").uniface();
        List<String> types = List.of("t1", "t2", "t10", "u");
        for (int i = 0; i < coins; i++) {
            CoinBuilder coin = catalogue.coin("c" + i, types.get(random.nextInt(types.size())));
            if (random.nextBoolean()) {
                coin.measured("bench", random.nextInt(9) + 1 + "." + random.nextInt(10) + " g",
                        random.nextInt(20) + 10 + " mm", random.nextInt(12) + 1 + " h");
            }
            if (random.nextBoolean()) {
                coin.measured("old-1894", random.nextInt(90) + 10 + " gr", "0." + (random.nextInt(9) + 1) + " in",
                        random.nextInt(360) + "°");
            }
        }
        return catalogue.build();
    }

    private static Catalogue shuffled(Catalogue c, long seed) {
        List<Type> types = new ArrayList<>(c.types());
        List<Coin> coins = new ArrayList<>(c.coins());
        Collections.shuffle(types, new Random(seed));
        Collections.shuffle(coins, new Random(seed + 1));
        return new Catalogue(c.title(), c.plan(), c.style(), c.conventions(), c.works(), c.mints(), c.rulers(),
                c.findSpots(), c.collections(), types, coins, c.chapters(), c.apparatus(), c.templates(),
                c.citationStyle(), c.groups());
    }

    @Property(tries = 100)
    void theOrderOfTheEntriesChangesNothingInTheBook(@ForAll long seed, @ForAll @IntRange(max = 12) int coins) {
        Catalogue catalogue = catalogue(seed, coins);
        assertEquals(Read.book(catalogue), Read.book(shuffled(catalogue, seed)));
    }

    @Property(tries = 100)
    void numbersRunFromOneWithoutAGap(@ForAll long seed, @ForAll @IntRange(max = 12) int coins) {
        assertEquals(IntStream.rangeClosed(1, coins).mapToObj(String::valueOf).toList(),
                Read.specimens(catalogue(seed, coins)).stream().map(Specimen::number).toList());
    }

    @Property(tries = 100)
    void noLineBreaksBetweenAFigureAndItsUnit(@ForAll long seed, @ForAll @IntRange(max = 12) int coins) {
        Read.specimens(catalogue(seed, coins)).forEach(coin -> coin.cells().forEach(
                cell -> assertFalse(cell.text().contains(" "), cell.text())));
    }
}
