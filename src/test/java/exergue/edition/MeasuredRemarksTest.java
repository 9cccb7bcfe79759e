package exergue.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.measure.Alloy;
import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.model.Catalogue;
import exergue.model.Inline;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Thickness, density and surface are printed where the house wants them, and leave nothing where a coin has none. */
class MeasuredRemarksTest {

    private static final String WEIGHED = "14.103 g in air, 13.081 g in water, 20 °C";

    @Test
    void inTheLineOnlyOfTheCoinsThatHaveThem() {
        Catalogue catalogue = builder().order(Kind.WEIGHT, Kind.THICKNESS, Kind.DENSITY, Kind.SURFACE).build();
        assertEquals("14.10 g, 2.1 mm, 13.8 g/cm³, 254 mm²", plain(specimen(catalogue, "c1").line()));
        assertEquals("14.05 g", plain(specimen(catalogue, "c2").line()));
        assertEquals("By its density 52 (50–54) per cent gold if alloyed with nothing but silver.", remarks(catalogue, "c1"));
        assertEquals("", remarks(catalogue, "c2"));
        assertFalse(Read.methods(catalogue).contains("No thickness"), Read.methods(catalogue));
    }

    @Test
    void amongTheRemarks() {
        Catalogue catalogue = builder().inRemarks(Kind.THICKNESS, Kind.DENSITY).build();
        assertEquals("14.10 g, 20 mm, 6 h", plain(specimen(catalogue, "c1").line()));
        assertEquals("Thickness 2.1 mm. Density 13.8 g/cm³. By its density 52 (50–54) per cent gold if alloyed with nothing "
                + "but silver.", remarks(catalogue, "c1"));
        assertEquals("", remarks(catalogue, "c2"));
    }

    @Test
    void notAtAllUnlessTheHouseWantsThem() {
        Catalogue catalogue = builder().build();
        assertEquals("", remarks(catalogue, "c1"));
        assertFalse(Read.methods(catalogue).contains("densit"), Read.methods(catalogue));
    }

    @Test
    void noFinenessWithoutAnAlloyOrBeyondIt() {
        CatalogueBuilder builder = new CatalogueBuilder().inRemarks(Kind.DENSITY);
        builder.type("a-plain");
        builder.type("b-pale").alloy(Alloy.GOLD_SILVER);
        builder.coin("c1", "a-plain").measured("bench", "14.10 g", "20 mm", "6 h").also(Kind.DENSITY, "13.8");
        builder.coin("c2", "b-pale").measured("bench", "14.10 g", "20 mm", "6 h").also(Kind.DENSITY, "9.1");
        Catalogue catalogue = builder.build();
        assertEquals("Density 13.8 g/cm³.", remarks(catalogue, "c1"));
        assertEquals("Density 9.1 g/cm³.", remarks(catalogue, "c2"));
    }

    @Test
    void otherHandsAreKeptUnlessTheHousePrintsThem() {
        assertEquals("", remarks(twice(new CatalogueBuilder()), "c1"));
        assertTrue(Read.methods(twice(new CatalogueBuilder())).contains("kept with the record"));
    }

    @Test
    void otherHandsArePrintedAsRecordedAndConverted() {
        Catalogue catalogue = twice(new CatalogueBuilder().otherHandsPrinted());
        assertEquals("Hallowby: 59.7 gr (3.87 g), 0.70 in (18 mm), 180° (6 h). The sale list: 3.9 g.", remarks(catalogue, "c1"));
        assertTrue(Read.methods(catalogue).contains("follow among the remarks"), Read.methods(catalogue));
    }

    @Test
    void whatIsPreferredIsNotPrintedTwice() {
        Catalogue catalogue = twice(new CatalogueBuilder().otherHandsPrinted().prefer("old-1894"));
        assertEquals("3.87 g, 18 mm, 6 h", plain(specimen(catalogue, "c1").line()));
        assertEquals("Measurements at the bench: 3.85 g, 18 mm, 6 h. The sale list: 3.9 g.", remarks(catalogue, "c1"));
    }

    @Test
    void dataHaveThemAllWhateverTheHousePrints() {
        Catalogue catalogue = twice(new CatalogueBuilder());
        DataRow row = DataRows.of(catalogue, Read.book(catalogue), PageMap.UNKNOWN).get(0);
        assertEquals(List.of("old-1894 weight 59.7 gr [3.868494927]", "old-1894 diameter 0.70 in [17.780]", "old-1894 axis 180° [6]",
                "sale weight 3.9 g [3.9]"), row.others().stream().map(other -> other.convention() + " " + other.kind().word() + " "
                        + other.recorded() + " " + other.values()).toList());
    }

    private static CatalogueBuilder builder() {
        CatalogueBuilder catalogue = new CatalogueBuilder();
        catalogue.type("t").alloy(Alloy.GOLD_SILVER);
        catalogue.coin("c1", "t").measured("bench", "14.10 g", "20 mm", "6 h").also(Kind.THICKNESS, "2.1 mm")
                .also(Kind.DENSITY, WEIGHED).also(Kind.SURFACE, "254 mm²");
        catalogue.coin("c2", "t").measured("bench", "14.05 g", "20 mm", "7 h");
        return catalogue;
    }

    private static Convention sale() {
        Convention silent = Convention.UNDECLARED;
        return new Convention("sale", "the sale list", silent.by(), silent.when(), silent.work(), silent.weighing(), silent.sizing(),
                silent.turning(), false, silent.cleaning());
    }

    private static Catalogue twice(CatalogueBuilder catalogue) {
        catalogue.convention(CatalogueBuilder.old()).work("hallowby", "Hallowby", "");
        catalogue.convention(sale());
        catalogue.type("t");
        catalogue.coin("c1", "t").measured("bench", "3.85 g", "18 mm", "6 h").measured("old-1894", "59.7 gr", "0.70 in", "180°")
                .measured("sale", "3.9 g", "", "");
        return catalogue.build();
    }

    private static Specimen specimen(Catalogue catalogue, String coin) {
        return Read.specimens(catalogue).stream().filter(one -> one.number().equals(coin.substring(1))).findFirst().orElseThrow();
    }

    private static String plain(String printed) {
        return printed.replace('\u202F', ' ').replace('\u00A0', ' ');
    }

    private static String remarks(Catalogue catalogue, String coin) {
        return plain(Inline.plain(specimen(catalogue, coin).remarks()));
    }
}
