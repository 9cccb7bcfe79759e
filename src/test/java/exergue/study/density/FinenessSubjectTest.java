package exergue.study.density;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.files.MemoryTree;
import exergue.model.CoinField;
import exergue.source.SourceReader;
import exergue.study.figure.Exhibit;
import exergue.study.figure.FigureTable;
import exergue.study.figure.Request;
import exergue.study.figure.Wording;
import exergue.study.group.Coins;
import exergue.study.group.Gathering;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Fineness of groups from weighings in air and water, invented, at 20 °C. Reckoned in Python from the density of water by Tanaka
 * and others 2001 (0.998207), of room air (0.0012) and of the metals in the CRC Handbook (from memory): 8.630 g and 7.800 g make
 * 10.3677 g/cm³ and 0.9309 silver (0.9241 to 0.9377 for half a step either way); 7.790 g, 10.2443 and 0.8595 (0.8527 to 0.8663);
 * 14.10 g and 13.08 g, 13.7834 and 0.5234 gold (0.5077 to 0.5392).
 */
class FinenessSubjectTest {

    private static Gathering gathering;

    @BeforeAll
    static void read() throws IOException {
        Map<String, String> files = new TreeMap<>();
        files.put("catalogue.yaml", "title: Coins\nlanguage: en\nparts: {body: [catalogue]}\n");
        files.put("mints.yaml", "lampron: {name: Lampron}\n");
        files.put("conventions.yaml", "lab: {title: weighings in the laboratory}\n");
        files.put("types/silver.yaml", "id: silver\nmint: lampron\ndenomination: Drachm\nmetal: silver\nalloy: silver-copper\n");
        files.put("types/gold.yaml", "id: gold\nmint: lampron\ndenomination: Stater\nmetal: gold\nalloy: gold-silver\n");
        files.put("types/plain.yaml", "id: plain\nmint: lampron\ndenomination: Unit\nmetal: copper\n");
        coin(files, "s-1", "silver", "8.630 g in air, 7.800 g in water, 20 °C");
        coin(files, "s-2", "silver", "8.630 g in air, 7.790 g in water, 20 °C");
        coin(files, "s-3", "silver", "8.630 g in air, 7.400 g in water, 20 °C");
        coin(files, "g-1", "gold", "14.10 g in air, 13.08 g in water, 20 °C");
        coin(files, "p-1", "plain", "8.630 g in air, 7.800 g in water, 20 °C");
        gathering = Gathering.of(SourceReader.read(MemoryTree.ofText(files)).catalogue().orElseThrow());
    }

    private static void coin(Map<String, String> files, String id, String type, String density) {
        files.put("coins/" + id + ".yaml", "id: " + id + "\ntype: " + type + "\nmeasured: {by: lab, density: '" + density + "'}\n");
    }

    private static String shown(String form, List<Coins> groups) {
        Exhibit exhibit = new FinenessSubject().show(form, new Request(groups, Optional.empty(), Wording.PLAIN)).orElseThrow();
        return exhibit.table().rows().stream().map(row -> row.stream().map(FinenessSubjectTest::text).collect(Collectors.joining(" | ")))
                .collect(Collectors.joining("\n"));
    }

    private static String text(FigureTable.Cell cell) {
        return cell.text() + String.join(", ", cell.coins());
    }

    @Test
    void groupsAreSummedUpAlloyByAlloyInWholePerCents() {
        assertEquals("Lampron | gold, silver | 1 | 52 | – | 52–52 | ±\u00A02 | 0\n"
                + "Lampron | silver, copper | 2 | 90 | 5 | 86–93 | ±\u00A01 | 1", shown("table", gathering.by(List.of(CoinField.MINT))));
    }

    @Test
    void everyCoinStandsWithItsRange() {
        assertEquals("g-1 | 13.78 | gold, silver | 52 (51–54)\ns-1 | 10.37 | silver, copper | 93 (92–94)\n"
                + "s-2 | 10.24 | silver, copper | 86 (85–87)", shown("coins", List.of(gathering.all("all"))));
    }

    @Test
    void aGroupOfTwoAlloysHasNoMean() {
        FinenessSubject subject = new FinenessSubject();
        assertEquals("–", subject.figure("mean fineness", gathering.all("all"), Wording.PLAIN));
        assertEquals("52 %", subject.figure("mean fineness", gathering.by(List.of(CoinField.TYPE)).get(0), Wording.PLAIN));
        assertEquals("5", subject.figure("coins with density", gathering.all("all"), Wording.PLAIN));
    }
}
