package exergue.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class UnitsTest {

    @Test
    void everyUnitHasItsOwnIdAndSpellingsAndASource() {
        Set<String> seen = new HashSet<>();
        for (Unit unit : Units.all()) {
            assertTrue(seen.add(unit.id()), unit.id());
            assertFalse(unit.source().text().isBlank());
            for (String spelling : unit.spellings()) {
                assertTrue(seen.add("spelt " + spelling), spelling);
                assertEquals(spelling, spelling.toLowerCase(Locale.ROOT).replace(".", ""));
            }
        }
    }

    @Test
    void everySpellingIsReadAsItsUnit() {
        for (Unit unit : Units.all()) {
            Kind kind = switch (unit.dimension()) {
                case MASS -> Kind.WEIGHT;
                case LENGTH -> Kind.DIAMETER;
                case TURN -> Kind.AXIS;
                case DENSITY -> Kind.DENSITY;
                case AREA -> Kind.SURFACE;
            };
            for (String spelling : unit.spellings()) {
                assertEquals(unit, Hints.read(kind, "1 " + spelling, "").asRecorded().get(0).unit(), spelling);
                assertEquals(unit, Units.named(spelling).orElseThrow());
            }
        }
    }

    @Test
    void unitsAreNamedByIdSymbolOrSpelling() {
        assertEquals(Units.GRAIN, Units.named("gr").orElseThrow());
        assertEquals(Units.GRAIN, Units.named("grains").orElseThrow());
        assertEquals(Units.INCH, Units.named("in.").orElseThrow());
        assertEquals(Units.FRENCH_GRAIN, Units.named("french-grain").orElseThrow());
        assertTrue(Units.named("stone").isEmpty());
    }

    @Property
    void thereAndBack(@ForAll("units") Unit unit, @ForAll("figures") BigDecimal figure) {
        BigDecimal there = new Quantity(figure, unit, BigDecimal.ONE).in(Units.normal(unit.dimension())).value();
        Ratio back = new Ratio(unit.factor().denominator(), unit.factor().numerator());
        BigDecimal slip = back.times(there).subtract(figure).abs();
        assertTrue(slip.compareTo(figure.movePointLeft(30)) <= 0, figure + " " + unit.id() + " off by " + slip);
    }

    @Provide
    Arbitrary<Unit> units() {
        return Arbitraries.of(Units.all());
    }

    @Provide
    Arbitrary<BigDecimal> figures() {
        return Arbitraries.bigDecimals().between(new BigDecimal("0.001"), new BigDecimal("10000")).ofScale(3);
    }
}
