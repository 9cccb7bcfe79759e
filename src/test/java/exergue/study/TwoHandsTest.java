package exergue.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.Golden;
import exergue.finding.Place;
import exergue.measure.Convention;
import exergue.edition.methods.english.AgreementSentence;
import exergue.measure.Kind;
import exergue.measure.PrintForm;
import exergue.measure.Quantity;
import exergue.measure.Reading;
import exergue.measure.Unit;
import exergue.measure.Units;
import exergue.model.Coin;
import exergue.model.Measurement;
import exergue.model.Side;
import exergue.model.Written;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class TwoHandsTest {

    private static final Place PLACE = new Place("coins/lk-1.yaml", 1, 1, 1);
    private static final Path APPROVED = Path.of("src/test/resources/golden/study/agreement");
    private static final Convention BENCH = convention("bench", "measurements at the bench", Convention.Direction.GREATEST);
    private static final Convention LIST = convention("list", "Hallam’s list", Convention.Direction.TOP_TO_BOTTOM);

    private static final List<Coin> COINS = List.of(
            coin("lk-1", figures("3.87", "18.5", "6"), figures("3.85", "18", "6")),
            coin("lk-2", figures("3.91", "19", "12"), figures("3.92", "18", "1")),
            coin("lk-3", figures("3.79", "18", "5"), figures("3.74", "17", "7")),
            coin("lk-4", figures("3.95", "19.5", "3"), figures("3.92", "19", "3")),
            coin("lk-5", figures("3.88", "18", "9"), Map.of()));

    @Test
    void onlyCoinsReadByBothAreCounted() {
        TwoHands hands = TwoHands.of(BENCH, LIST, COINS);
        assertEquals(4, hands.weights().size());
        assertEquals(new AxisAgreement(4, 2, 3), hands.axes());
        assertTrue(hands.inDifferentDirections());
        assertEquals(0.0225, hands.weight().orElseThrow().bias(), 1e-9);
        assertEquals(0.75, hands.diameter().orElseThrow().bias(), 1e-9);
    }

    @Test
    void tableAndSentence() {
        Agreement agreement = new Agreement(List.of(TwoHands.of(BENCH, LIST, COINS), TwoHands.of(BENCH, LIST, COINS.subList(0, 2))));
        StringBuilder text = new StringBuilder();
        agreement.rows().forEach(row -> text.append(row).append('\n'));
        agreement.pairs().forEach(pair -> text.append(AgreementSentence.of(pair, PrintForm.DEFAULT)).append('\n'));
        Golden.check(APPROVED.resolve("table.txt"), text.toString());
    }

    @Test
    void plot() {
        TwoHands hands = TwoHands.of(BENCH, LIST, COINS);
        Golden.check(APPROVED.resolve("plot.svg"), AgreementPlot.svg(hands, hands.weight().orElseThrow(), "g"));
    }

    @Property(tries = 50)
    void exchangingTheHandsOrTheCoinsChangesNoFigureButItsSign(@ForAll Random random) {
        List<Coin> shuffled = new ArrayList<>(COINS);
        Collections.shuffle(shuffled, random);
        TwoHands one = TwoHands.of(BENCH, LIST, COINS);
        TwoHands other = TwoHands.of(LIST, BENCH, shuffled);
        assertEquals(one.weight().orElseThrow().bias(), -other.weight().orElseThrow().bias(), 1e-12);
        assertEquals(one.diameter().orElseThrow().lower(), -other.diameter().orElseThrow().upper(), 1e-12);
        assertEquals(one.axes(), other.axes());
    }

    private static Convention convention(String id, String title, Convention.Direction direction) {
        Convention.Sizing sizing = new Convention.Sizing(Optional.empty(), Optional.empty(), direction, Optional.empty(),
                Optional.empty());
        return new Convention(id, title, Optional.empty(), Optional.empty(), Optional.empty(),
                Convention.UNDECLARED.weighing(), sizing, Convention.UNDECLARED.turning(), false, Optional.empty());
    }

    private static Map<Kind, Written<Reading>> figures(String weight, String diameter, String axis) {
        Map<Kind, Written<Reading>> readings = new EnumMap<>(Kind.class);
        readings.put(Kind.WEIGHT, read(Kind.WEIGHT, weight, Units.GRAM));
        readings.put(Kind.DIAMETER, read(Kind.DIAMETER, diameter, Units.MILLIMETRE));
        readings.put(Kind.AXIS, read(Kind.AXIS, axis, Units.HOUR));
        return readings;
    }

    private static Written<Reading> read(Kind kind, String figure, Unit unit) {
        BigDecimal value = new BigDecimal(figure);
        List<Quantity> quantity = List.of(new Quantity(value, unit, value.ulp()));
        return new Written<>(new Reading.Read(kind, figure + " " + unit.symbol(), Reading.Form.SINGLE, quantity, quantity,
                Reading.Qualifier.NONE), PLACE);
    }

    private static Coin coin(String id, Map<Kind, Written<Reading>> bench, Map<Kind, Written<Reading>> list) {
        return new Coin(new Written<>(id, PLACE), new Written<>("owl-drachm", PLACE), Optional.empty(),
                Optional.of(new Measurement(new Written<>("bench", PLACE), BENCH, bench, PLACE)),
                List.of(new Measurement(new Written<>("list", PLACE), LIST, list, PLACE)),
                List.of(), Optional.empty(), Optional.empty(), Optional.empty(), Side.BLANK, Side.BLANK, Optional.empty(), Optional.empty(),
                List.of(), Optional.empty(), List.of(), Optional.empty(), Optional.empty(), List.of(), List.of(), PLACE);
    }
}
