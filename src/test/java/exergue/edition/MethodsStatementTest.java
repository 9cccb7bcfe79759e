package exergue.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.Golden;
import exergue.finding.Finding;
import exergue.measure.Alloy;
import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.measure.PrintForm;
import exergue.model.Damage;
import exergue.model.Language;
import exergue.model.Making;
import exergue.model.Shape;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class MethodsStatementTest {

    private static final Pattern DECIMAL_POINT = Pattern.compile("\\d\\.\\d");
    /**
     * In French a thin space stands before a semicolon, question and exclamation mark, a word space before a colon and within
     * quotation marks, and none of them breaks: Lexique des règles typographiques en usage à l’Imprimerie nationale, as quoted
     * by S. Viguier, Ponctuation et espaces; for quotation marks from memory.
     */
    private static final Pattern TIGHT_MARK = Pattern.compile("[^\u202F][;?!]|[^\u00A0][:»]|«[^\u00A0]");
    private static final Path GOLDEN = Path.of("src/test/resources/golden/edition");

    private static Map<String, Supplier<CatalogueBuilder>> cases() {
        Map<String, Supplier<CatalogueBuilder>> cases = new LinkedHashMap<>();
        cases.put("methods-short", MethodsStatementTest::plain);
        cases.put("methods-converted", MethodsStatementTest::converted);
        cases.put("methods-missing", MethodsStatementTest::missing);
        cases.put("methods-damaged", MethodsStatementTest::damaged);
        cases.put("methods-flans", MethodsStatementTest::flans);
        cases.put("methods-thickness", MethodsStatementTest::thickness);
        cases.put("methods-compared", MethodsStatementTest::compared);
        cases.put("methods-densities", MethodsStatementTest::densities);
        cases.put("methods-single", MethodsStatementTest::single);
        cases.put("methods-agreement", MethodsStatementTest::agreement);
        cases.put("methods-few", MethodsStatementTest::few);
        cases.put("methods-none", CatalogueBuilder::new);
        return cases;
    }

    @TestFactory
    Stream<DynamicTest> statements() {
        return cases().entrySet().stream().flatMap(entry -> Stream.of(Language.values()).map(language ->
                DynamicTest.dynamicTest(entry.getKey() + " " + language.code(), () -> Golden.check(
                        GOLDEN.resolve(entry.getKey()).resolve(file(language)),
                        Read.methods(entry.getValue().get().language(language).build())
                                .replace('\u00A0', '~').replace('\u202F', '~')))));
    }

    @TestFactory
    Stream<DynamicTest> marksOfThePageFollowTheLanguage() {
        return cases().entrySet().stream().flatMap(entry -> Stream.of(Language.values())
                .filter(language -> language != Language.ENGLISH).map(language ->
                DynamicTest.dynamicTest(entry.getKey() + " " + language.code(), () -> {
                    String statement = Read.methods(entry.getValue().get().language(language).build());
                    assertFalse(DECIMAL_POINT.matcher(statement).find(), "a decimal point");
                    assertFalse(language == Language.FRENCH && TIGHT_MARK.matcher(statement).find(),
                            "a mark without its space");
                })));
    }

    private static String file(Language language) {
        return language == Language.ENGLISH ? "statement.txt" : "statement." + language.code() + ".txt";
    }

    private static CatalogueBuilder densities() {
        CatalogueBuilder catalogue = new CatalogueBuilder().inRemarks(Kind.DENSITY, Kind.SURFACE);
        catalogue.type("gold").alloy(Alloy.GOLD_SILVER);
        catalogue.type("billon").alloy(Alloy.SILVER_COPPER);
        catalogue.type("t");
        for (int i = 1; i <= 4; i++) {
            catalogue.coin("g" + i, "gold").measured("bench", "14.10 g", "20 mm", "6 h")
                    .also(Kind.DENSITY, "14.10 g in air, 13.08 g in water, 20 °C");
        }
        catalogue.coin("b1", "billon").measured("bench", "8.6 g", "20 mm", "6 h").also(Kind.DENSITY, "9.4").also(Kind.SURFACE, "300 mm²");
        catalogue.coin("b2", "t").measured("bench", "8.6 g", "20 mm", "6 h").also(Kind.DENSITY, "missing: not to be wetted");
        return catalogue;
    }

    private static CatalogueBuilder plain() {
        CatalogueBuilder catalogue = new CatalogueBuilder();
        catalogue.type("t");
        catalogue.coin("c1", "t").measured("bench", "3.87 g", "18 mm", "6 h");
        catalogue.coin("c2", "t").measured("bench", "3.9 g", "17 mm", "12 h");
        return catalogue;
    }

    private static CatalogueBuilder converted() {
        CatalogueBuilder catalogue = new CatalogueBuilder().convention(CatalogueBuilder.old())
                .work("hallowby", "Hallowby", "").prefer("bench", "old-1894");
        Convention sizes = CatalogueBuilder.old();
        catalogue.convention(new Convention("sizes", "the sale list", sizes.by(), sizes.when(), sizes.work(),
                sizes.weighing(), new Convention.Sizing(sizes.sizing().instrument(), sizes.sizing().unit(),
                        Convention.Direction.GREATEST, Optional.of("mionnet-1805"),
                        sizes.sizing().resolution()), sizes.turning(), false, sizes.cleaning()));
        catalogue.type("t");
        for (int i = 1; i <= 12; i++) {
            catalogue.coin("c" + i, "t").measured("bench", "3.8" + i % 10 + "4 g", "18.5 mm", i + " h");
        }
        for (int i = 13; i <= 16; i++) {
            catalogue.coin("c" + i, "t").measured("bench", "3.87 g", "18 mm", "6 h")
                    .measured("old-1894", "6" + i % 10 + ".5 gr", "11/16 in", "180°");
        }
        catalogue.coin("d1", "t").measured("old-1894", "2 dwt 11 gr", "0.70 in", "200°");
        catalogue.coin("d2", "t").measured("old-1894", "61.5 gr", "0.70 in", "345°");
        catalogue.coin("d3", "t").measured("sizes", "61.5 gr", "size 5", "missing: not recorded");
        catalogue.coin("d4", "t").measured("old-1894", "61.5 gr", "0.70 in", "↙");
        catalogue.coin("d5", "t").measured("old-1894", "61.5 gr", "0.70 in", "↑↓");
        return catalogue;
    }

    private static CatalogueBuilder missing() {
        CatalogueBuilder catalogue = new CatalogueBuilder();
        catalogue.type("t");
        catalogue.type("u").uniface();
        catalogue.type("p").made(Making.PUNCHED);
        catalogue.coin("c1", "t").measured("bench", "missing: coin lost", "18 mm", "6 h");
        catalogue.coin("c2", "t").measured("bench", "missing: coin lost", "18 mm", "6 h");
        catalogue.coin("c3", "t").measured("bench", "missing: not at hand", "illegible: ink blot", "");
        catalogue.coin("u1", "u").measured("bench", "1.2 g", "12 mm", "not applicable: uniface");
        catalogue.coin("p1", "p").measured("bench", "c. 1.3 g", "12 mm", "");
        return catalogue;
    }

    private static CatalogueBuilder damaged() {
        CatalogueBuilder catalogue = new CatalogueBuilder().convention(named("store", "the store’s list", "cleaned"));
        catalogue.type("t");
        catalogue.coin("c1", "t").measured("bench", "2.87 g", "18 mm", "6 h").damaged(Damage.BROKEN, Damage.PIERCED);
        catalogue.coin("c2", "t").measured("bench", "3.80 g", "18 mm", "6 h").damaged(Damage.CHIPPED)
                .weightCounts(true, "only a chip at the edge");
        catalogue.coin("c3", "t").measured("bench", "3.10 g", "18 mm", "6 h").damaged(Damage.BROKEN);
        catalogue.coin("c4", "t").measured("bench", "5.10 g", "18 mm", "6 h").weightCounts(false, "a trial piece");
        catalogue.coin("c5", "t").measured("bench", "missing: lost", "18 mm", "6 h").damaged(Damage.BROKEN);
        catalogue.coin("c6", "t").measured("store", "3.2 g", "18 mm", "6 h").damaged(Damage.UNCLEANED);
        for (int i = 1; i <= 13; i++) {
            catalogue.coin("d" + i, "t").measured("bench", "3." + (10 + i) + " g", "18 mm", "6 h").damaged(Damage.CORRODED);
        }
        return catalogue;
    }

    private static CatalogueBuilder flans() {
        CatalogueBuilder catalogue = new CatalogueBuilder();
        catalogue.type("a").shape(Shape.SQUARE, "").made(Making.CAST);
        catalogue.type("b").shape(Shape.POLYGONAL, "across the flats").made(Making.MACHINE_STRUCK);
        catalogue.type("c");
        catalogue.coin("a1", "a").measured("bench", "3 g", "18 x 17 mm", "12 h");
        catalogue.coin("a2", "a").measured("bench", "3 g", "18 x 18 mm", "12 h");
        catalogue.coin("a3", "a").measured("bench", "3 g", "18 mm", "12 h");
        catalogue.coin("b1", "b").measured("bench", "3 g", "16 mm", "6 h");
        catalogue.coin("b2", "b").measured("bench", "3 g", "16 mm", "7 h");
        catalogue.coin("c1", "c").measured("bench", "3 g", "16-18 mm", "6.5 h");
        catalogue.coin("c2", "c").measured("bench", "3 g", "17.2 x 16.8 mm", "6 h");
        return catalogue;
    }

    /** A house that rounds halves upwards and prints thicknesses. */
    private static CatalogueBuilder thickness() {
        CatalogueBuilder catalogue = new CatalogueBuilder().order(Kind.WEIGHT, Kind.DIAMETER, Kind.THICKNESS)
                .form(new PrintForm(1, 0, RoundingMode.HALF_UP, ".", "\u00A0", "h"), ", ", "");
        catalogue.type("t");
        catalogue.coin("c1", "t").measured("bench", "3.85 g", "18.5 mm", "6 h").also(Kind.THICKNESS, "2.2 mm");
        catalogue.coin("c2", "t").measured("bench", "3.8 g", "18 mm", "").also(Kind.THICKNESS, "missing: in a frame");
        return catalogue;
    }

    /** Three hands beside the main one: enough coins of two, too few of the third; one of them is the first declared. */
    private static CatalogueBuilder compared() {
        CatalogueBuilder catalogue = new CatalogueBuilder().convention(named("store", "the store’s list", "cleaned"))
                .convention(CatalogueBuilder.old()).convention(named("sale", "the sale list", "some cleaned, some not"))
                .work("hallowby", "Hallowby", "").prefer("old-1894");
        catalogue.type("t");
        for (int i = 1; i <= 4; i++) {
            catalogue.coin("c" + i, "t").measured("old-1894", "60." + i + " gr", "0.7" + i + " in", "180°")
                    .measured("bench", "3.8" + i + " g", "18 mm", i + " h").measured("store", "3.9" + i + " g", "", "");
        }
        catalogue.coin("c5", "t").measured("old-1894", "60.5 gr", "0.70 in", "180°").measured("sale", "4 g", "18 mm", "");
        return catalogue;
    }

    /** One of everything, so that every sentence is in the singular; a source that counts anticlockwise in arrows. */
    private static CatalogueBuilder single() {
        Convention old = CatalogueBuilder.old();
        CatalogueBuilder catalogue = new CatalogueBuilder().convention(new Convention("arrows", "the notebook", Optional.empty(),
                Optional.of("1880"), Optional.empty(), old.weighing(), old.sizing(),
                new Convention.Turning(Convention.AxisNotation.ARROWS, true, Optional.empty()), false, Optional.of("as found")));
        catalogue.type("t").shape(Shape.SQUARE, "across the middle").made(Making.CAST);
        catalogue.coin("c1", "t").measured("arrows", "61.5 gr", "0.70 in", "3 h").damaged(Damage.CHIPPED);
        return catalogue;
    }

    /** Two hands that took diameters along different lines and agree in some axes. */
    private static CatalogueBuilder agreement() {
        Convention bench = CatalogueBuilder.bench();
        CatalogueBuilder catalogue = new CatalogueBuilder().convention(new Convention("list", "the list of 1931", Optional.empty(),
                Optional.empty(), Optional.empty(), bench.weighing(), new Convention.Sizing(Optional.empty(), Optional.empty(),
                Convention.Direction.GREATEST, Optional.empty(), Optional.empty()), bench.turning(), false, Optional.empty()));
        catalogue.type("t");
        for (int i = 1; i <= 4; i++) {
            catalogue.coin("c" + i, "t").measured("bench", "3.8" + i + " g", "18 mm", i + " h")
                    .measured("list", "3.8" + i + " g", "18." + i + " mm", Math.max(i, 2) + i / 4 * 3 + " h");
        }
        return catalogue;
    }

    private static CatalogueBuilder few() {
        CatalogueBuilder catalogue = new CatalogueBuilder().convention(named("list", "the list of 1931", "uncleaned"));
        catalogue.type("t");
        catalogue.coin("c1", "t").measured("bench", "3.8 g", "18 mm", "6 h").measured("list", "3.9 g", "", "");
        return catalogue;
    }

    private static Convention named(String id, String title, String cleaning) {
        Convention bench = CatalogueBuilder.bench();
        return new Convention(id, title, Optional.empty(), Optional.empty(), Optional.empty(), bench.weighing(),
                bench.sizing(), bench.turning(), false, Optional.of(cleaning),
                id.equals("sale") ? Optional.of("Sale") : Optional.empty());
    }

    @Test
    void theAuthorsSentencesFollowWithTheirCountsFilledIn() {
        CatalogueBuilder catalogue = twoCoins("I weighed {coins of bench} coins, {weights} weights in all.");
        assertTrue(Read.methods(catalogue.build()).endsWith("I weighed two coins, two weights in all.\n"));
        assertEquals(List.of(), findings(catalogue));
    }

    @Test
    void aContradictionIsFoundAtItsPlace() {
        CatalogueBuilder catalogue = twoCoins("Measurements at the bench cover 3 coins. They give two weights.");
        assertEquals(List.of("count-contradicted at chapters/methods.md:3:1: The text says “3 coins” of “measurements "
                + "at the bench”, but the entries give 2."), findings(catalogue));
    }

    @Test
    void aCountThatNothingBearsOutIsANote() {
        assertEquals(List.of("count-not-borne-out at chapters/methods.md:3:1: The text says “seven coins”, which is none "
                + "of the counts taken from the entries."), findings(twoCoins("There are seven coins.")));
    }

    @Test
    void aNumberThatIsNoCountIsLeftAlone() {
        assertEquals(List.of(), findings(twoCoins("")
                .authorsMethods("The balance was bought in 1931. It reads to 0.01 g.")));
    }

    @Test
    void anUnknownCounterOffersTheNearMiss() {
        Finding finding = Editor.edit(twoCoins("There are {coin} of them.").build(), Map.of(), PageMap.UNKNOWN).findings().all().get(0);
        assertEquals("unknown-counter", finding.code().id());
        assertEquals("Did you mean “{coins}”?", finding.remedy());
    }

    private static CatalogueBuilder twoCoins(String sentence) {
        CatalogueBuilder catalogue = new CatalogueBuilder().authorsMethods(sentence);
        catalogue.type("t");
        catalogue.coin("c1", "t").measured("bench", "3.87 g", "18 mm", "6 h");
        catalogue.coin("c2", "t").measured("bench", "3.87 g", "18 mm", "6 h");
        return catalogue;
    }

    private static List<String> findings(CatalogueBuilder catalogue) {
        return Editor.edit(catalogue.build(), Map.of(), PageMap.UNKNOWN).findings().all().stream()
                .map(f -> f.code().id() + " at " + f.place() + ": " + f.what()).toList();
    }
}
