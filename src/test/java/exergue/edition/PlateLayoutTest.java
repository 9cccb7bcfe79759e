package exergue.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.edition.Plate.Pair;
import exergue.edition.Plate.Row;
import exergue.edition.Specimen.Face;
import exergue.edition.Specimen.Picture;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class PlateLayoutTest {

    private static final PlateSpace SPACE = new PlateSpace(new BigDecimal("158"), new BigDecimal("210"), new BigDecimal("190"));

    private static List<List<Row>> plates(List<Integer> widths) {
        List<Pair> pairs = new ArrayList<>();
        for (int width : widths) {
            Optional<Face> face = Optional.of(new Face("o.jpg", "o.jpg", "", new BigDecimal(width), new BigDecimal(width), ""));
            pairs.add(new Pair("lk-" + pairs.size(), "" + (pairs.size() + 1), new Picture(face, face, Optional.empty(), true, "")));
        }
        return PlateLayout.of(pairs, SPACE);
    }

    private static BigDecimal height(List<Row> plate) {
        return plate.stream().map(row -> row.above().add(row.height()).add(PlateSpace.NUMBER_BELOW))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    @Property(tries = 200)
    void everyPairIsOnAPlateOnceInOrderAndNothingIsTooWideOrTooHigh(
            @ForAll @Size(max = 120) List<@IntRange(min = 6, max = 70) Integer> widths) {
        List<List<Row>> plates = plates(widths);
        List<String> numbers = plates.stream().flatMap(List::stream).flatMap(row -> row.pairs().stream())
                .map(Pair::number).toList();
        assertEquals(widths.size(), numbers.size());
        for (int i = 0; i < numbers.size(); i++) {
            assertEquals("" + (i + 1), numbers.get(i));
        }
        for (List<Row> plate : plates) {
            assertTrue(height(plate).compareTo(SPACE.height(plate == plates.get(plates.size() - 1))) <= 0, plate::toString);
            for (Row row : plate) {
                assertTrue(row.cell().multiply(new BigDecimal(row.places())).compareTo(SPACE.width()) <= 0);
                assertTrue(row.pairs().size() <= row.places(), row::toString);
                row.pairs().forEach(pair -> assertTrue(pair.width().compareTo(row.cell()) < 0, pair::toString));
                assertTrue(row.pairs().stream().allMatch(pair -> pair.height().compareTo(row.height()) <= 0));
            }
        }
    }

    /** Nobody can do with fewer plates than the pictures, laid without any white, would fill. */
    @Property(tries = 100)
    void thereAreNoMorePlatesThanOneAfterTheOtherWouldTake(@ForAll @Size(min = 1, max = 90) List<@IntRange(min = 8, max = 30) Integer> widths) {
        int plates = 1;
        int filled = 0;
        for (int from = 0; from < widths.size();) {
            int places = 6;
            while (places > 1 && (2 * widths.subList(from, Math.min(from + places, widths.size())).stream().max(Integer::compare).orElseThrow()
                    + 7.5) * places > 157.9) {
                places--;
            }
            int to = Math.min(from + places, widths.size());
            int row = Collections.max(widths.subList(from, to)) + 9;
            if (filled + row > 190) {
                plates++;
                filled = 0;
            }
            filled += row;
            from = to;
        }
        assertTrue(plates(widths).size() <= plates, widths::toString);
    }

    @Test
    void platesAreFilledFromTopToFoot() {
        for (List<Row> plate : plates(Collections.nCopies(40, 25))) {
            assertTrue(height(plate).compareTo(new BigDecimal("189")) > 0, height(plate)::toString);
            assertEquals(BigDecimal.ZERO, plate.get(0).above());
        }
    }

    /** As many rows as go onto the first would leave one for the second. */
    @Test
    void theLastPlateIsFilledLikeTheOthers() {
        assertEquals(List.of(14, 12), plates(Collections.nCopies(26, 20)).stream()
                .map(plate -> plate.stream().mapToInt(row -> row.pairs().size()).sum()).toList());
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
    void noRowHasOneCoinOnlyBecauseTheOthersAreFull() {
        assertEquals(List.of(3, 3, 3, 3, 3), plates(Collections.nCopies(15, 17)).get(0).stream().map(row -> row.pairs().size()).toList());
        assertEquals(List.of(3, 3, 2, 2), plates(Collections.nCopies(10, 18)).get(0).stream().map(row -> row.pairs().size()).toList());
    }

    @Test
    void noPictureNoPlate() {
        assertEquals(List.of(), plates(List.of()));
    }
}
