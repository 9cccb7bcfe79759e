package exergue.edition.apparatus;

import exergue.dating.Dating;
import exergue.edition.BookWords;
import exergue.finding.Place;
import exergue.model.BookWord;
import exergue.model.Catalogue;
import exergue.model.FindSpot;
import exergue.model.Inline;
import exergue.model.Prose;
import exergue.model.Ruler;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Coins of one find by period, with what was lost in each. */
final class PeriodTable {

    private static final String NOTHING = "–";

    private final Catalogue catalogue;
    private final BookWords words;
    private final Place place;

    PeriodTable(Catalogue catalogue, BookWords words, Place place) {
        this.catalogue = catalogue;
        this.words = words;
        this.place = place;
    }

    /** @param periods coins by the id of their ruler, empty for types without one */
    Prose.Table of(FindSpot.Kind kind, Map<String, Integer> periods) {
        boolean loss = kind != FindSpot.Kind.HOARD;
        int all = periods.values().stream().mapToInt(Integer::intValue).sum();
        List<List<List<Inline>>> rows = new ArrayList<>();
        periods.forEach((id, coins) -> rows.add(row(id, coins, all, loss)));
        rows.add(cells(loss ? List.of(words.of(BookWord.TOTAL), "", String.valueOf(all), figure(LossRate.perThousand(all, all)), "")
                : List.of(words.of(BookWord.TOTAL), String.valueOf(all))));
        List<BookWord> heads = loss ? List.of(BookWord.PERIOD, BookWord.YEARS, BookWord.COINS, BookWord.PER_THOUSAND,
                BookWord.PER_YEAR) : List.of(BookWord.PERIOD, BookWord.COINS);
        List<String> align = loss ? List.of("left", "right", "right", "right", "right") : List.of("left", "right");
        return new Prose.Table(align, cells(heads.stream().map(words::of).toList()), rows, place);
    }

    private List<List<Inline>> row(String id, int coins, int all, boolean loss) {
        Optional<Ruler> ruler = Optional.ofNullable(catalogue.rulers().get(id));
        String name = ruler.map(r -> r.name().value()).orElse(id.isEmpty() ? NOTHING : id);
        if (!loss) {
            return cells(List.of(name, String.valueOf(coins)));
        }
        OptionalInt years = ruler.flatMap(Ruler::dates).map(dates -> years(dates.value())).orElse(OptionalInt.empty());
        return cells(List.of(name, years.isPresent() ? String.valueOf(years.getAsInt()) : NOTHING, String.valueOf(coins),
                figure(LossRate.perThousand(coins, all)),
                years.isPresent() ? figure(LossRate.perYear(coins, years.getAsInt(), all)) : NOTHING));
    }

    /**
     * From the first year to the last. Where one reign begins in the year in which the other ends, that year counts for
     * the later one; a reign within one year counts as one.
     */
    static OptionalInt years(Dating dates) {
        return dates.earliest().isPresent() && dates.latest().isPresent()
                ? OptionalInt.of(Math.max(1, dates.latest().getAsInt() - dates.earliest().getAsInt())) : OptionalInt.empty();
    }

    private String figure(BigDecimal figure) {
        return figure.toPlainString().replace(".", catalogue.style().form().decimalMark());
    }

    private static List<List<Inline>> cells(List<String> texts) {
        List<List<Inline>> cells = new ArrayList<>();
        texts.forEach(text -> cells.add(List.of(new Inline.Words(text))));
        return cells;
    }
}
