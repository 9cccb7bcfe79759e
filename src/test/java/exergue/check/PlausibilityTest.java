package exergue.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class PlausibilityTest {

    private static SmallTree fiveCoins() {
        return new SmallTree().withCoin("lk-2", "3.90 g", "").withCoin("lk-3", "3.85 g", "").withCoin("lk-4", "3.88 g", "")
                .withCoin("lk-5", "3.86 g", "");
    }

    @Test
    void coinsOfOneWeightAreNoOutliersForAHairsBreadth() {
        SmallTree equal = new SmallTree();
        for (int i = 2; i <= 9; i++) {
            equal.withCoin("lk-" + i, "3.87 g", "");
        }
        assertEquals(List.of(), equal.withCoin("lk-10", "3.95 g", "").codes());
        assertEquals(List.of("weight-far-off"), equal.withCoin("lk-10", "4.95 g", "").codes());
    }

    @Test
    void aSmallGroupSaysNothing() {
        assertEquals(List.of(), new SmallTree().withCoin("lk-2", "3.90 g", "").withCoin("lk-3", "59.7 g", "").codes());
    }

    @Test
    void damageExplainsALightCoinButNotAHeavyOne() {
        assertEquals(List.of("weight-far-off"), fiveCoins().withCoin("lk-6", "2.10 g", "").codes());
        assertEquals(List.of(), fiveCoins().withCoin("lk-6", "2.10 g", "damage: [broken]\n").codes());
        assertEquals(List.of("weight-far-off"), fiveCoins().withCoin("lk-6", "8.10 g", "damage: [broken]\n").codes());
        assertEquals(List.of(), fiveCoins().withCoin("lk-6", "8.10 g", "damage: [mounted]\n").codes());
    }

    @Test
    void aWeightThatTheAuthorTakesOutIsNotReported() {
        assertEquals(List.of(), fiveCoins().withCoin("lk-6", "2.10 g", "weight-counts: {counts: no, why: a copper core}\n").codes());
    }

    @Test
    void damagedCoinsStayOutOfTheGroup() {
        SmallTree broken = fiveCoins();
        for (int i = 10; i < 30; i++) {
            broken.withCoin("lk-" + i, "2.00 g", "damage: [broken]\n");
        }
        assertEquals(List.of(), broken.codes());
    }

    @Test
    void aSmallTypeIsHeldAgainstItsDenomination() {
        SmallTree tree = fiveCoins().with("types/owl-palm.yaml", SmallTree.TYPE.replace("owl-drachm", "owl-palm"));
        tree.with("coins/lk-6.yaml", SmallTree.COIN.replace("lk-1", "lk-6").replace("owl-drachm", "owl-palm")
                .replace("3.87 g", "38.7 g"));
        assertEquals(List.of("weight-far-off"), tree.codes());
    }

    @Test
    void coinsOfAnotherStandardSayNothingOfASmallType() {
        SmallTree tree = fiveCoins().with("types/owl-drachm.yaml", SmallTree.TYPE + "standard: royal (3.88 g)\n");
        for (int i = 10; i < 20; i++) {
            tree.with("types/light.yaml", SmallTree.TYPE.replace("owl-drachm", "light") + "standard: of the league (3.42 g)\n")
                    .with("coins/lk-" + i + ".yaml", SmallTree.COIN.replace("lk-1", "lk-" + i).replace("owl-drachm", "light")
                            .replace("3.87 g", "3.4" + i % 10 + " g"));
        }
        tree.with("types/owl-palm.yaml", SmallTree.TYPE.replace("owl-drachm", "owl-palm") + "standard: royal (3.88 g)\n")
                .with("coins/lk-6.yaml", SmallTree.COIN.replace("lk-1", "lk-6").replace("owl-drachm", "owl-palm").replace("3.87 g", "3.38 g"));
        assertEquals(List.of("weight-far-off"), tree.codes());
    }

    @Test
    void declaredLimitsGoBeforeTheGroup() {
        SmallTree tree = fiveCoins().withCoin("lk-6", "2.10 g", "")
                .with("types/owl-drachm.yaml", SmallTree.TYPE + "limits: {weight: {from: 2 g, to: 4.4 g}}\n");
        assertEquals(List.of(), tree.codes());
        assertEquals(List.of("outside-limits"), tree.withCoin("lk-7", "1.99 g", "").codes());
    }
}
