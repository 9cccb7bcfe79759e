package exergue.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.finding.Finding;
import exergue.model.Catalogue;
import exergue.model.PrintScale;
import exergue.photo.print.PrintedCoin;
import exergue.photo.print.PrintedCoins;
import exergue.photo.print.PrintedSide;
import exergue.photo.print.Tone;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which coins of a plate are said to have been photographed in another light. */
class PlateTonesTest {

    private final CatalogueBuilder builder = new CatalogueBuilder().part("plates");
    private final Map<String, PrintedCoin> pictures = new LinkedHashMap<>();

    private void coins(int... meansAndSpreads) {
        builder.type("a");
        for (int i = 0; i < meansAndSpreads.length; i += 2) {
            String id = "c" + (i / 2 + 1);
            builder.coin(id, "a").measured("bench", "3.87 g", "18 mm", "6 h").pictured(id + ".jpg", "", "");
            pictures.put(id, new PrintedCoin(Optional.of(new PrintedSide(id + ".jpg", id + ".jpg", new BigDecimal("18"),
                    new BigDecimal("18"), "", Optional.of(new Tone(meansAndSpreads[i], meansAndSpreads[i + 1], 0)))),
                    Optional.empty(), true, PrintScale.LIFE));
        }
    }

    private List<Finding> findings() {
        Catalogue catalogue = builder.build();
        return Editor.edit(catalogue, Map.of(), new PrintedCoins(pictures), PageMap.UNKNOWN).findings().all().stream()
                .filter(finding -> finding.code().id().equals("light-differs-on-plate")).toList();
    }

    @Test
    void aDarkOneAmongLightOnes() {
        coins(128, 40, 131, 42, 61, 35, 125, 38, 130, 41);
        assertEquals(List.of("On Plate\u00A0I no. 3 (“c3”) is darker than the others of its metal there: its mean grey is 61, "
                + "that in the middle of them 128 (0 black, 255 white)."), findings().stream().map(Finding::what).toList());
    }

    @Test
    void aFlatOneAndAHardOne() {
        coins(128, 40, 131, 42, 120, 15, 125, 38, 130, 90);
        assertEquals(List.of("flatter", "harder"), findings().stream()
                .map(finding -> finding.what().replaceAll(".*is (\\w+) than.*", "$1")).toList());
    }

    @Test
    void nothingIsSaidOfAnEvenPlateNorOfThreeCoins() {
        coins(100, 40, 135, 42, 120, 35, 118, 38);
        assertEquals(List.of(), findings());
    }

    @Test
    void ofThreeNobodyCanSayWhichIsTheOddOne() {
        coins(60, 40, 200, 42, 120, 35);
        assertEquals(List.of(), findings());
    }
}
