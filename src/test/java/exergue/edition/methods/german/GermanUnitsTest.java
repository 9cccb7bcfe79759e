package exergue.edition.methods.german;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.edition.methods.UnitName;
import exergue.measure.SizeScale;
import exergue.measure.Unit;
import exergue.measure.Units;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A new unit or scale needs its name in German. */
class GermanUnitsTest {

    static List<Unit> units() {
        return Stream.concat(Units.all().stream(), Stream.of(Units.ARROW)).toList();
    }

    @ParameterizedTest
    @MethodSource("units")
    void everyUnitHasItsNameAndItsSource(Unit unit) {
        UnitName name = GermanUnits.of(unit);
        assertFalse(name.singular().isBlank() || name.plural().isBlank() || name.source().isBlank());
        assertFalse(name.source().matches(".*\\d\\.\\d.*"), "a decimal point in " + name.source());
    }

    static List<SizeScale> scales() {
        return SizeScale.all();
    }

    @ParameterizedTest
    @MethodSource("scales")
    void everyScaleHasItsNameWithItsYear(SizeScale scale) {
        String year = scale.id().replaceAll("\\D", "");
        assertTrue(GermanUnits.scale(scale).endsWith(year));
    }
}
