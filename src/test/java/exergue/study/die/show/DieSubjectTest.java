package exergue.study.die.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.Golden;
import exergue.files.MemoryTree;
import exergue.measure.PrintForm;
import exergue.model.Catalogue;
import exergue.model.CoinField;
import exergue.model.DieWord;
import exergue.model.Language;
import exergue.source.SourceReader;
import exergue.study.chart.ChartDrawing;
import exergue.study.chart.Links;
import exergue.study.die.Die;
import exergue.study.die.DieOfCoin;
import exergue.study.die.DieSide;
import exergue.study.die.DieStudy;
import exergue.study.die.StruckCoin;
import exergue.study.figure.Exhibit;
import exergue.study.figure.FigureTable;
import exergue.study.figure.Plot;
import exergue.study.figure.Request;
import exergue.study.figure.Wording;
import exergue.study.group.Coins;
import exergue.study.group.Gathering;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The die study of a small invented issue, in every form. */
class DieSubjectTest {

    private static final Path APPROVED = Path.of("src/test/resources/golden/study/dies");

    /** Obverse, its state, reverse; a dash for a die that could not be told. */
    private static final List<String> COINS = List.of("O1 1 R1", "O1 1 R2", "O1 2 R3", "O1 2 R3", "O2 - R3", "O2 - R4", "O3 - R5", "O3 - R6", "O4 - R6",
            "O5 - R7", "O5 - R7", "O5 - R7", "- - R1", "O6 - -");

    private static Catalogue catalogue(String houseStyle) {
        Map<String, String> files = new TreeMap<>();
        files.put("catalogue.yaml", "title: Coins of the Harbour\nlanguage: en\nparts: {body: [catalogue]}\n");
        files.put("house-style.yaml", houseStyle);
        files.put("mints.yaml", "lampron: {name: Lampron}\nharbour: {name: Harbour}\n");
        for (String mint : List.of("lampron", "harbour")) {
            files.put("types/owl-" + mint + ".yaml", "id: owl-" + mint + "\nmint: " + mint + "\ndenomination: Drachm\nmetal: silver\n");
        }
        for (int i = 0; i < COINS.size(); i++) {
            String[] coin = COINS.get(i).split(" ");
            String state = coin[1].equals("-") ? coin[0] : "{die: " + coin[0] + ", state: " + coin[1]
                    + (coin[1].equals("2") ? ", flaw: a crack}" : "}");
            String dies = (coin[0].equals("-") ? "" : "  obverse: " + state + "\n") + (coin[2].equals("-") ? "" : "  reverse: " + coin[2] + "\n");
            files.put("coins/c-" + (i + 1) + ".yaml", "id: c-" + (i + 1) + "\ntype: owl-" + (i % 2 == 0 ? "lampron" : "harbour") + "\ndies:\n" + dies);
        }
        try {
            return SourceReader.read(MemoryTree.ofText(files)).catalogue().orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Optional<Exhibit> show(String form, List<Coins> groups) {
        return new DieSubject().show(form, new Request(groups, Optional.empty(), Wording.PLAIN));
    }

    private static List<Coins> all(String houseStyle) {
        return List.of(Gathering.of(catalogue(houseStyle)).all("Drachms"));
    }

    static List<String> forms() {
        return new DieSubject().forms();
    }

    @ParameterizedTest
    @MethodSource("forms")
    void everyFormIsAsApproved(String form) {
        Exhibit exhibit = show(form, all("")).orElseThrow();
        Golden.check(APPROVED.resolve(form + ".txt"), text(exhibit));
        if (exhibit instanceof Plot plot) {
            Golden.check(APPROVED.resolve(form + ".svg"), ChartDrawing.svg(plot.chart()));
        }
    }

    private static String text(Exhibit exhibit) {
        FigureTable table = exhibit.table();
        String alternative = exhibit instanceof Plot plot ? plot.alternative() + "\n" : "";
        return alternative + line(table.head()) + table.rows().stream().map(DieSubjectTest::line).collect(Collectors.joining())
                + String.join("\n", exhibit.notes()) + "\n";
    }

    private static String line(List<FigureTable.Cell> cells) {
        return cells.stream().map(cell -> cell.text() + String.join(", ", cell.coins())).collect(Collectors.joining(" | ")) + "\n";
    }

    @Test
    void severalGroupsStandSideBySide() {
        List<Coins> mints = Gathering.of(catalogue("")).by(List.of(CoinField.MINT));
        Golden.check(APPROVED.resolve("by-mint.txt"), text(show("table", mints).orElseThrow()) + text(show("estimates", mints).orElseThrow()));
    }

    /** One series of numbers joins the mints; where each begins anew, O1 of the one is not O1 of the other, and says so. */
    @Test
    void namesOfDiesMayBeginAnewWithEachMint() {
        assertEquals("6", figure("obverse dies", ""));
        assertEquals("10", figure("obverse dies", "die-names: by mint\n"));
        assertTrue(text(show("links", all("die-names: by mint\n")).orElseThrow()).contains("O1\u00A0harbour"));
    }

    private static String figure(String name, String houseStyle) {
        return new DieSubject().figure(name, all(houseStyle).get(0), Wording.PLAIN);
    }

    @Test
    void everyFigureForRunningTextHasAValue() {
        String figures = new DieSubject().figures().stream().map(name -> name + ": " + figure(name, "")).collect(Collectors.joining("\n", "", "\n"));
        Golden.check(APPROVED.resolve("figures.txt"), figures);
    }

    @Test
    void coinsWithoutDiesHaveNothingToShow() {
        List<Coins> none = List.of(new Coins("none", "None", Optional.empty(), List.of()));
        forms().forEach(form -> assertEquals(Optional.empty(), show(form, none)));
    }

    /** A chain of a hundred dies is drawn in bands, every line once, every die with its name. */
    @Test
    void aLongChainGoesOnInFurtherBands() {
        List<StruckCoin> coins = new ArrayList<>();
        for (int i = 0; i < 50; i++) {
            coins.add(coin(coins.size(), i, i));
            coins.add(coin(coins.size(), i, i + 1));
        }
        DieStudy study = DieStudy.of(coins);
        Plot plot = new LinkDiagram(new DieWords(Wording.PLAIN, false), study).plot();
        Links links = (Links) plot.chart();
        assertTrue(links.bands().size() > 1 && links.slots() <= 19, links.bands().size() + " bands of " + links.slots());
        assertEquals(100, links.bands().stream().flatMap(band -> band.groups().stream()).mapToInt(group -> group.lines().size()).sum());
        assertTrue(plot.notes().contains(DieWord.AGAIN_NOTE.in(Language.ENGLISH)));
    }

    private static StruckCoin coin(int number, int obverse, int reverse) {
        return new StruckCoin("c-" + number, die(DieSide.OBVERSE, "O" + obverse), die(DieSide.REVERSE, "R" + reverse));
    }

    private static Optional<DieOfCoin> die(DieSide side, String name) {
        return Optional.of(new DieOfCoin(new Die(side, "", name), OptionalInt.empty(), Optional.empty()));
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void everyFormSpeaksEveryLanguage(Language language) {
        Wording wording = new Wording(language, PrintForm.DEFAULT);
        for (String form : forms()) {
            String text = text(new DieSubject().show(form, new Request(all(""), Optional.empty(), wording)).orElseThrow());
            assertFalse(text.contains("{") || text.contains("}"), text);
        }
    }
}
