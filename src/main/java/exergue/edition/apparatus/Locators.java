package exergue.edition.apparatus;

import exergue.edition.Anchors;
import exergue.edition.Numbering;
import exergue.edition.PageMap;
import exergue.model.Coin;
import exergue.model.IndexStyle;
import exergue.model.Inline;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * Where coins are found: their catalogue numbers, or the pages they stand on. Numbers that follow each other are one
 * run, and each run is a link to its first coin. The comma stands inside the link, since a line may end where one does.
 */
public final class Locators {

    /** Printed where there is no coin: a type known from other works only, or a number that is in use no longer. */
    static final Inline NONE = new Inline.Words("–");

    private final Numbering numbers;
    private final PageMap pages;

    public Locators(Numbering numbers, PageMap pages) {
        this.numbers = numbers;
        this.pages = pages;
    }

    /** One place a coin is found: its label in print, and its rank if it can be part of a run. */
    private record Spot(String anchor, String label, int rank) { }

    /** @param by what is printed; pages that are not yet known are numbers for the time being */
    List<Inline> of(Collection<Coin> coins, IndexStyle.By by) {
        return by == IndexStyle.By.PAGES && pages.pages() > 0 ? runs(coins, this::page) : numbers(coins);
    }

    List<Inline> numbers(Collection<Coin> coins) {
        return runs(coins, this::number);
    }

    private int rank(Coin coin) {
        return numbers.of(coin.id().value()).orElse(0);
    }

    private Spot number(Coin coin) {
        return new Spot(Anchors.coin(coin.id().value()), String.valueOf(rank(coin)), rank(coin));
    }

    private Spot page(Coin coin) {
        String anchor = Anchors.coin(coin.id().value());
        String folio = pages.folio(anchor).orElse("–");
        return new Spot(anchor, folio, folio.matches("[0-9]+") ? Integer.parseInt(folio) : -1);
    }

    private List<Inline> runs(Collection<Coin> coins, Function<Coin, Spot> where) {
        List<Spot> spots = coins.stream().filter(coin -> rank(coin) > 0).distinct()
                .sorted(Comparator.comparingInt(this::rank)).map(where).toList();
        List<Inline> runs = new ArrayList<>();
        int first = 0;
        while (first < spots.size()) {
            int last = first;
            while (last + 1 < spots.size() && follows(spots.get(last), spots.get(last + 1))) {
                last++;
            }
            if (!runs.isEmpty()) {
                runs.add(new Inline.Words(" "));
            }
            runs.add(run(spots.get(first), spots.get(last), last + 1 < spots.size()));
            first = last + 1;
        }
        return runs;
    }

    private static boolean follows(Spot one, Spot next) {
        return one.label().equals(next.label()) || one.rank() > 0 && next.rank() == one.rank() + 1;
    }

    private static Inline run(Spot first, Spot last, boolean more) {
        String words = first.label().equals(last.label()) ? first.label() : first.label() + "–" + last.label();
        return new Inline.Link("#" + first.anchor(), List.of(new Inline.Words(words + (more ? "," : ""))));
    }
}
