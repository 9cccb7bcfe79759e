package exergue.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.edition.Plate.Pair;
import exergue.edition.Plate.Row;
import exergue.edition.Specimen.Picture;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class PlateLayoutTest {

    private static List<List<Row>> plates(List<Integer> widths) {
        List<Pair> pairs = new ArrayList<>();
        for (int width : widths) {
            pairs.add(new Pair("lk-" + pairs.size(), "" + (pairs.size() + 1), new Picture(Optional.of("o.jpg"),
                    Optional.of("r.jpg"), "", "", Optional.empty(), new BigDecimal(width), true)));
        }
        return PlateLayout.of(pairs);
    }

    private static BigDecimal height(List<Row> plate) {
        return plate.stream().map(row -> row.above().add(row.height()).add(new BigDecimal("5")))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    @Property(tries = 200)
    void everyPairIsOnAPlateOnceInOrderAndNothingIsTooWideOrTooHigh(
            @ForAll @Size(max = 120) List<@IntRange(min = 6, max = 76) Integer> widths) {
        List<List<Row>> plates = plates(widths);
        List<String> numbers = plates.stream().flatMap(List::stream).flatMap(row -> row.pairs().stream())
                .map(Pair::number).toList();
        assertEquals(widths.size(), numbers.size());
        for (int i = 0; i < numbers.size(); i++) {
            assertEquals("" + (i + 1), numbers.get(i));
        }
        for (List<Row> plate : plates) {
            assertTrue(height(plate).compareTo(new BigDecimal("203")) <= 0, plate::toString);
            for (Row row : plate) {
                assertTrue(row.cell().multiply(new BigDecimal(row.places())).compareTo(new BigDecimal("158")) <= 0);
                assertTrue(row.pairs().size() <= row.places(), row::toString);
                row.pairs().forEach(pair -> assertTrue(pair.picture().width().multiply(new BigDecimal("2"))
                        .compareTo(row.cell()) < 0, pair::toString));
                assertTrue(row.pairs().stream().allMatch(pair -> pair.picture().width().compareTo(row.height()) <= 0));
            }
        }
    }

    @Test
    void aFullPlateIsFilledFromTopToFoot() {
        List<Row> full = plates(List.of(25, 25, 25, 25, 25, 25, 25, 25, 25, 25, 25, 25, 25, 25, 25, 25)).get(0);
        assertTrue(height(full).compareTo(new BigDecimal("202")) > 0, height(full)::toString);
        assertEquals(BigDecimal.ZERO, full.get(0).above());
    }

    @Test
    void theLastPlateKeepsTheDistancesOfTheOneBefore() {
        List<List<Row>> plates = plates(java.util.Collections.nCopies(18, 25));
        List<Row> last = plates.get(plates.size() - 1);
        assertEquals(plates.get(0).get(1).above(), last.get(last.size() - 1).above());
        assertTrue(height(last).compareTo(new BigDecimal("203")) < 0);
    }

    @Test
    void rowsOfCoinsOfOneSizeHaveCommonAxes() {
        assertEquals(List.of(3, 3), plates(List.of(20, 20, 19, 18, 22)).get(0).stream().map(Row::places).toList());
    }

    @Test
    void smallCoinsStandCloser() {
        assertEquals(List.of(4, 2, 1), plates(List.of(10, 9, 10, 11, 30, 33, 40)).get(0).stream().map(Row::places).toList());
    }

    @Test
    void noPictureNoPlate() {
        assertEquals(List.of(), plates(List.of()));
    }
}
