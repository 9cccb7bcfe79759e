package exergue.study.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.files.FolderTree;
import exergue.finding.Place;
import exergue.model.CoinGroup;
import exergue.model.Written;
import exergue.source.SourceReader;
import exergue.study.figure.FigureTable;
import exergue.study.figure.Request;
import exergue.study.figure.Wording;
import exergue.study.group.Coins;
import exergue.study.group.Gathering;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StandardTest {

    private static final Place NOWHERE = Place.ofFile("catalogue.yaml");

    /** Hill 1909, Historical Roman Coins: a pound of 327.45 g, four scruples (the 72nd part) 4.55 g; Pliny 33.132: 84 to the pound. */
    @ParameterizedTest
    @CsvSource({"327.45, 72, 4.548", "327.45, 84, 3.898", "15.84, 1, 15.84"})
    void soManyToThePound(BigDecimal pound, int pieces, double coin) {
        assertEquals(coin, Standard.weight(new CoinGroup.WeightStandard(Optional.empty(), written(pound), written(pieces))), 5e-4);
    }

    /** The rate is invented: half a milligram a year for twenty years is 0.01 g, and nothing else in the table changes. */
    @Test
    void wearIsMadeGoodOnlyByTheAuthorsRate() throws IOException {
        Coins group = Gathering.of(SourceReader.read(new FolderTree(Path.of("catalogue-src"))).catalogue().orElseThrow())
                .declared("royal-tetradrachms").orElseThrow().get(0);
        List<List<String>> plain = rows(group);
        CoinGroup declared = group.declared().orElseThrow();
        CoinGroup worn = new CoinGroup(declared.id(), declared.name(), declared.coins(), declared.by(), declared.steps(), declared.standard(),
                Optional.of(new CoinGroup.Wear(written(new BigDecimal("0.0005")), written(20), Optional.empty())));
        List<List<String>> corrected = rows(new Coins(group.id(), group.name(), Optional.of(worn), group.members()));
        assertEquals(plain, corrected.subList(0, plain.size()));
        assertEquals(plain.size() + 2, corrected.size());
        assertEquals("0.01", corrected.get(plain.size()).get(1));
        assertTrue(plain.stream().noneMatch(row -> row.get(0).contains("wear")));
    }

    private static List<List<String>> rows(Coins group) {
        FigureTable table = new StandardTable(new Request(List.of(group), Optional.empty(), Wording.PLAIN)).table().orElseThrow();
        return table.rows().stream().map(row -> row.stream().map(FigureTable.Cell::text).toList()).toList();
    }

    private static <T> Written<T> written(T value) {
        return new Written<>(value, NOWHERE);
    }
}
