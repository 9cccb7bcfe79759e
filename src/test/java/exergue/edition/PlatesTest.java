package exergue.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.model.PictureStyle;
import exergue.model.PrintScale;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which coins are on which plate, at what size, and what is said below. */
class PlatesTest {

    private final CatalogueBuilder catalogue = new CatalogueBuilder().language(exergue.model.Language.ENGLISH);

    private Part.Plates plates() {
        return Read.book(catalogue.build()).body().stream().filter(Part.Plates.class::isInstance)
                .map(Part.Plates.class::cast).findFirst().orElseThrow();
    }

    private CoinBuilder coin(String id) {
        return catalogue.coin(id, "a").measured("bench", "3.87 g", "18 mm", "6 h");
    }

    @Test
    void aBookWithoutThePartHasNone() {
        catalogue.type("a");
        coin("c1").pictured("o.jpg", "r.jpg", "");
        assertEquals("", Read.specimens(catalogue.build()).get(0).plate());
    }

    @Test
    void everyCoinWithAPictureIsOnAPlateAndNamesIt() {
        catalogue.part("plates").type("a");
        coin("c1").pictured("o.jpg", "r.jpg", "").wide("24.3 mm");
        coin("c2");
        coin("c3").pictured("", "r.jpg", "");
        assertEquals(List.of("pl.\u00A0I", "", "pl.\u00A0I"),
                Read.specimens(catalogue.build()).stream().map(Specimen::plate).toList());
        assertEquals(List.of("1", "3"), plates().plates().stream().flatMap(plate -> plate.rows().stream())
                .flatMap(row -> row.pairs().stream()).map(Plate.Pair::number).toList());
        assertEquals("Plate\u00A0I", plates().plates().get(0).heading());
    }

    @Test
    void aBookWithoutPicturesHasNoPlates() {
        catalogue.part("plates").type("a");
        coin("c1");
        assertEquals(List.of(), Read.book(catalogue.build()).body().stream().filter(Part.Plates.class::isInstance).toList());
    }

    @Test
    void theLegendSaysScaleAndCredits() {
        catalogue.part("plates").type("a");
        coin("c1").pictured("o.jpg", "r.jpg", "Aldmoor Museum");
        coin("c2").pictured("o.jpg", "r.jpg", "Aldmoor Museum");
        coin("c3").pictured("o.jpg", "r.jpg", "A. Orr");
        catalogue.coin("c4", "a").pictured("o.jpg", "r.jpg", "");
        assertEquals(List.of("Scale 1:1.", "Not to scale: no.\u00A04.", "Aldmoor Museum: nos\u00A01–2.", "A. Orr: no.\u00A03."),
                plates().legend());
    }

    @Test
    void oneCreditForAllNeedsNoNumbers() {
        catalogue.part("plates").type("a");
        coin("c1").pictured("o.jpg", "r.jpg", "Aldmoor Museum");
        assertEquals(List.of("Scale 1:1.", "Aldmoor Museum."), plates().legend());
    }

    @Test
    void aPlateNamesTheMintsOfItsCoinsWithTheirNumbers() {
        catalogue.mint("arethe", "Arethe").part("plates").type("a");
        catalogue.type("b").at("arethe", "");
        coin("c1");
        coin("c2").pictured("o.jpg", "r.jpg", "");
        coin("c3").pictured("o.jpg", "r.jpg", "");
        catalogue.coin("c4", "b").pictured("o.jpg", "r.jpg", "");
        assertEquals("Lykaia 2–3, Arethe 4", plates().plates().get(0).caption());
    }

    /** A coin's own scale goes before the rule for small coins, and this before the house's scale. */
    @Test
    void anEnlargedCoinSaysSoByItsNumber() {
        catalogue.pictures(new PictureStyle(PictureStyle.Ground.CUT_OUT, PictureStyle.Colours.GREY, PrintScale.LIFE,
                Optional.of(new PictureStyle.Enlarged(new BigDecimal("12"), new PrintScale(2, 1))), 30)).part("plates").type("a");
        coin("c1").pictured("o.jpg", "r.jpg", "");
        catalogue.coin("c2", "a").measured("bench", "0.5 g", "9 mm", "6 h").pictured("o.jpg", "r.jpg", "");
        catalogue.coin("c3", "a").measured("bench", "0.5 g", "12 mm", "6 h").pictured("o.jpg", "r.jpg", "").scaled("3:2");
        catalogue.coin("c4", "a").measured("bench", "0.5 g", "11 mm", "6 h").pictured("o.jpg", "r.jpg", "").scaled("1:1");
        assertEquals(List.of("18", "2:1 18", "3:2 18", "11"), plates().plates().get(0).pairs().stream()
                .map(pair -> (pair.picture().scale() + " " + pair.picture().faces().get(0).width().toBigInteger()).strip()).toList());
        assertEquals("Scale 1:1, unless another stands by the number.", plates().legend().get(0));
        assertEquals(new DrawnScale(30, PrintScale.LIFE), plates().scaleBar());
    }

    /** The picture's own width; else the greatest diameter; else 20 mm, not to scale. */
    @ParameterizedTest
    @CsvSource(nullValues = "-", value = {"24.3 mm, 18 mm, 24.3 true", "1 in, 18 mm, 25.4 true", "-, 18 mm, 18 true",
        "-, 17 x 18.5 mm, 18.5 true", "missing: no scale, 18 mm, 18 true", "-, missing: not taken, 20 false"})
    void howLargeAPictureIs(String width, String diameter, String printed) {
        catalogue.type("a");
        CoinBuilder coin = catalogue.coin("c1", "a").measured("bench", "3.87 g", diameter, "6 h").pictured("o.jpg", "r.jpg", "");
        if (width != null) {
            coin.wide(width);
        }
        Specimen.Picture picture = Read.specimens(catalogue.build()).get(0).picture().orElseThrow();
        assertEquals(printed, picture.faces().get(0).width().stripTrailingZeros().toPlainString() + " "
                + String.valueOf(picture.toScale()).toLowerCase(Locale.ROOT));
    }

    /** Beside coins at 2:1 its millimetres are two long; it is shortened to what a plate has room for. */
    @ParameterizedTest
    @CsvSource({"30, 1:1, 30, 30", "30, 2:1, 30, 60", "50, 4:1, 30, 120", "50, 20:1, 7, 140", "30, 1:2, 30, 15", "0, 2:1, 0, 0"})
    void theScaleIsThatOfTheCoins(int wanted, String scale, int length, String onPaper) {
        DrawnScale drawn = DrawnScale.fitting(wanted, PrintScale.of(scale).orElseThrow(), PlateSpace.WIDTH);
        assertEquals(length, drawn.length());
        assertEquals(0, new BigDecimal(onPaper).compareTo(drawn.onPaper(length)));
    }
}
