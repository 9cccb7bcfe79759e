package exergue.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.study.Summary;
import exergue.study.WeightTable;
import org.junit.jupiter.api.Test;

class WeightTableTest {

    @Test
    void damagedCoinsAndBoundsAreLeftOutUnlessTheAuthorKnowsBetter() {
        SmallTree tree = new SmallTree().withCoin("lk-2", "3.89 g", "")
                .withCoin("lk-3", "2.10 g", "damage: [broken]\n")
                .withCoin("lk-4", "3.88 g", "damage: [chipped]\nweight-counts: {counts: yes, why: a chip of less than 0.01 g}\n")
                .withCoin("lk-5", "\"> 3.5 g\"", "").withCoin("lk-6", "\"missing: lost\"", "");
        WeightTable.Row row = WeightTable.of(tree.read().catalogue().orElseThrow()).rows().get(0);
        Summary summary = row.summary().orElseThrow();
        assertEquals("owl-drachm", row.type());
        assertEquals(3, summary.n());
        assertEquals(3.88, summary.mean(), 1e-9);
        assertEquals(3.88, summary.median(), 1e-9);
        assertEquals(2, row.leftOut());
    }

    @Test
    void aTypeWithoutWeightsHasNoSummary() {
        SmallTree tree = new SmallTree().with("coins/lk-1.yaml", SmallTree.COIN.replace("3.87 g", "\"missing: lost\""));
        assertTrue(WeightTable.of(tree.read().catalogue().orElseThrow()).rows().get(0).summary().isEmpty());
    }
}
