package exergue.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.measure.Kind;
import exergue.measure.PrintForm;
import exergue.model.Damage;
import exergue.model.Shape;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeasurementLineTest {

    private static final String N = "\u202F";
    private static final PrintForm CONTINENTAL =
            new PrintForm(1, 1, RoundingMode.HALF_UP, ",", "\u00A0", "Uhr");

    private final CatalogueBuilder catalogue = new CatalogueBuilder().convention(CatalogueBuilder.old());

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "3.87 g | 18.2 mm   | 6 h                         | 3.87~g, 18~mm, 6~h",
        "3.9 g  | 18 mm     | 12 h                        | 3.9~g, 18~mm, 12~h",
        "3.865 g| 18.5 mm   | 330°                        | 3.86~g, 18~mm, 11~h",
        "3.87 g | 18 x 17 mm| 6 h                         | 3.87~g, 18_×_17~mm, 6~h",
        "c. 4 g | 18 mm     | 6 h                         | c._4~g, 18~mm, 6~h",
        "missing: lost | 18 mm | 6 h                      | –, 18~mm, 6~h",
        "3.87 g | illegible: ink | 6 h                    | 3.87~g, [–], 6~h",
        "3.87 g | 18 mm | not applicable: uniface         | 3.87~g, 18~mm",
        "missing: lost | missing: lost | not applicable: uniface | –, –",
    })
    void printsInTheHouseOrder(String weight, String diameter, String axis, String line) {
        catalogue.type("t");
        catalogue.coin("c", "t").measured("bench", weight, diameter, axis);
        assertEquals(line.replace("~", N).replace('_', '\u00A0'), Read.line(catalogue.build()));
    }

    @Test
    void anotherHouseHasItsOwnOrderSeparatorMarksAndComma() {
        catalogue.order(Kind.AXIS, Kind.WEIGHT, Kind.DIAMETER).form(CONTINENTAL, "; ", "n/a");
        catalogue.type("t").uniface();
        catalogue.coin("c", "t").measured("bench", "3.85 g", "18.25 mm", "");
        assertEquals("n/a; 3,9\u00A0g; 18,3\u00A0mm", Read.line(catalogue.build()));
    }

    @Test
    void aUnifaceCoinWithoutAnAxisIsNotMissingOne() {
        catalogue.type("t").uniface();
        catalogue.coin("c", "t").measured("bench", "3.85 g", "18 mm", "");
        assertEquals("3.85" + N + "g, 18" + N + "mm", Read.line(catalogue.build()));
    }

    @Test
    void aStruckCoinWithoutAnAxisIsMissingOne() {
        catalogue.type("t");
        catalogue.coin("c", "t").measured("bench", "3.85 g", "18 mm", "");
        assertEquals("3.85" + N + "g, 18" + N + "mm, –", Read.line(catalogue.build()));
    }

    @Test
    void aDamagedWeightCarriesItsSignUnlessTheAuthorCountsIt() {
        catalogue.type("t");
        catalogue.coin("c1", "t").measured("bench", "3.85 g", "", "").damaged(Damage.BROKEN);
        catalogue.coin("c2", "t").measured("bench", "3.85 g", "", "").damaged(Damage.CHIPPED)
                .weightCounts(true, "only a chip");
        catalogue.coin("c3", "t").measured("bench", "3.85 g", "", "").weightCounts(false, "a trial piece");
        assertEquals("† – – | – – | † – –", signsAndMarks());
    }

    private String signsAndMarks() {
        return String.join(" | ", Read.specimens(catalogue.build()).stream()
                .map(coin -> coin.line().replace("3.85" + N + "g", "").replace(",", " ").strip()
                        .replaceAll(" +", " ")).toList());
    }

    @Test
    void figuresFromAnotherHandCarryTheirSignAndAreConverted() {
        catalogue.type("t");
        catalogue.coin("c1", "t").measured("bench", "3.85 g", "18 mm", "missing: worn")
                .measured("old-1894", "59.4 gr", "0.70 in", "180°");
        assertEquals("3.85" + N + "g, 18" + N + "mm, 6" + N + "h°", Read.line(catalogue.build()));
    }

    @Test
    void thePreferredHandIsTheMainOneAndItsFiguresCarryNoSign() {
        catalogue.type("t");
        catalogue.coin("c1", "t").measured("bench", "3.85 g", "18 mm", "7 h").measured("old-1894", "59.4 gr", "", "180°");
        assertEquals("3.85" + N + "g, 18" + N + "mm°, 6" + N + "h", Read.line(catalogue.prefer("old-1894").build()));
    }

    @Test
    void squareCoinsKeepBothFiguresInOneCell() {
        catalogue.type("t").shape(Shape.SQUARE, "");
        catalogue.coin("c", "t").measured("bench", "3.87 g", "18 x 17.5 mm", "6 h");
        Specimen.Cell cell = Read.specimens(catalogue.form(new PrintForm(2, 1, RoundingMode.HALF_EVEN, ".", N, "h"),
                ", ", "").build()).get(0).cells().get(1);
        assertEquals("18\u00A0×\u00A017.5", cell.figure());
    }
}
