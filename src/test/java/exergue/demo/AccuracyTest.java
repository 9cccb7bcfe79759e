package exergue.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.Golden;
import exergue.demo.Accuracy.Measured;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** How well photographs are measured: 500 drawn coins, from plain to poor, of which the truth is known. */
class AccuracyTest {

    private static List<Measured> all;

    @BeforeAll
    static void measure() throws Exception {
        all = Accuracy.of(Accuracy.COINS, MakePhotographs.face());
    }

    @Test
    void halfOfTheDiametersAreWithinHalfAPerCentAndNearlyAllWithinOneAndAHalf() {
        double median = Accuracy.quantile(all, 0.5, Measured::diameters);
        double most = Accuracy.quantile(all, 0.95, Measured::diameters);
        assertTrue(median < 0.5, "median " + median);
        assertTrue(most < 1.5, "95 % " + most);
    }

    /** Refusing everything would be no art: most sides are outlined, most axes told. */
    @Test
    void mostAreMeasured() {
        long outlined = all.stream().mapToLong(one -> one.area().size()).sum();
        long told = all.stream().filter(one -> one.axis().isPresent()).count();
        assertTrue(outlined > 0.85 * 2 * all.size(), outlined + " sides outlined");
        assertTrue(told > 0.6 * all.size(), told + " axes told");
    }

    @Test
    void axesAreWithinFiveDegreesOrRefused() {
        double[] errors = all.stream().flatMap(one -> one.axis().stream()).mapToDouble(Double::doubleValue).sorted().toArray();
        assertTrue(errors[(int) (0.95 * errors.length)] < 5, "95 % " + errors[(int) (0.95 * errors.length)]);
        List<String> far = all.stream().filter(one -> one.axis().orElse(0.0) > 30).map(one -> one.number() + ": " + one.axis().get()).toList();
        assertEquals(List.of(), far);
    }

    @Test
    void theFiguresOfTheDocsAreThese() {
        Golden.check(Path.of("docs/accuracy.md"), Accuracy.page(all));
    }
}
