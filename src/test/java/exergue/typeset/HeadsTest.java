package exergue.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.typeset.Marks.Mark;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class HeadsTest {

    private final Marks marks = new Marks();
    private final Map<Mark, Integer> pageOf = new LinkedHashMap<>();

    private void on(int page) {
        pageOf.put(marks.all().get(marks.all().size() - 1), page);
    }

    private void entry(int page, String numbers) {
        marks.addEntry("type-" + numbers, "Lykaia", new Marks.RunsOn(numbers, "Drachm (continued)"));
        on(page);
    }

    private void coin(int page, String number) {
        marks.add(Marks.Kind.COIN, "coin-" + number, number, "Lykaia");
        on(page);
    }

    private List<String> continued(int count) {
        SetPages pages = new SetPages(count, 0, Set.of(), pageOf);
        List<?> sheets = (List<?>) new Heads(pages, Map.of(), "Coins").values().get("sheets");
        return sheets.stream().map(sheet -> (Map<?, ?>) sheet)
                .map(sheet -> (sheet.get("continuedNumbers") + " " + sheet.get("continued")).strip()).toList();
    }

    @Test
    void aPageThatOpensWithALaterCoinOfAnEntryNamesTheEntry() {
        entry(0, "1–3");
        coin(0, "1");
        coin(0, "2");
        coin(1, "3");
        entry(1, "4");
        coin(1, "4");
        assertEquals(List.of("", "1–3 Drachm (continued)"), continued(2));
    }

    @Test
    void soDoesEveryPageOfALongEntry() {
        entry(0, "1–3");
        coin(0, "1");
        coin(1, "2");
        coin(2, "3");
        assertEquals(List.of("", "1–3 Drachm (continued)", "1–3 Drachm (continued)"), continued(3));
    }

    @Test
    void aPageThatOpensWithAnEntryDoesNot() {
        entry(0, "1");
        coin(0, "1");
        entry(1, "2");
        coin(1, "2");
        assertEquals(List.of("", ""), continued(2));
    }
}
