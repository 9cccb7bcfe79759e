package exergue.edition.apparatus;

import exergue.edition.Anchors;
import exergue.edition.BookWords;
import exergue.edition.Listing;
import exergue.model.Apparatus.See;
import exergue.model.BookWord;
import exergue.model.Coin;
import exergue.model.IndexStyle;
import exergue.model.Inline;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** One index while it is being made: what is looked up, and the coins it leads to. */
final class Index {

    /** @param words as printed, from the first coin that had it; @param see where else to look */
    private record Entry(String words, List<Coin> coins, List<String> see) { }

    private final String name;
    private final BookWord heading;
    private final Map<String, Entry> entries = new LinkedHashMap<>();

    Index(String name, BookWord heading) {
        this.name = name;
        this.heading = heading;
    }

    void add(String words, Coin coin) {
        add(words, words, coin);
    }

    /** @param key by which it is sorted; entries with the same key are one */
    void add(String key, String words, Coin coin) {
        entries.computeIfAbsent(key, k -> new Entry(words, new ArrayList<>(), new ArrayList<>())).coins().add(coin);
    }

    /** What a see-reference may lead to, each with its key. */
    Map<String, String> targets() {
        Map<String, String> targets = new LinkedHashMap<>();
        entries.forEach((key, entry) -> {
            if (!entry.coins().isEmpty()) {
                targets.put(entry.words(), key);
                targets.putIfAbsent(key, key);
            }
        });
        return targets;
    }

    /** @param key sorts what a reader may look up as the entries of this index are sorted */
    void see(See see, Function<String, String> key) {
        String from = see.from().value();
        entries.computeIfAbsent(key.apply(from), k -> new Entry(from, new ArrayList<>(), new ArrayList<>()))
                .see().add(see.to().value());
    }

    boolean isEmpty() {
        return entries.isEmpty();
    }

    Listing listing(IndexOrder order, Locators locators, IndexStyle.By by, BookWords words) {
        List<String> keys = new ArrayList<>(entries.keySet());
        keys.sort(order);
        List<Listing.Line> lines = new ArrayList<>();
        String before = null;
        for (String key : keys) {
            Entry entry = entries.get(key);
            boolean opens = before != null && !order.sameLetter(before, key);
            lines.add(line(entry, opens, locators.of(entry.coins(), by), words));
            before = key;
        }
        return new Listing(Anchors.listing("index", name), List.of(new Inline.Words(words.of(heading))),
                Optional.empty(), lines);
    }

    private static Listing.Line line(Entry entry, boolean opens, List<Inline> found, BookWords words) {
        List<Inline> numbers = new ArrayList<>(found);
        if (!entry.see().isEmpty()) {
            String see = words.of(found.isEmpty() ? BookWord.SEE : BookWord.SEE_ALSO);
            numbers.add(new Inline.Words(found.isEmpty() ? "" : "; "));
            numbers.add(new Inline.Emphasis(List.of(new Inline.Words(see + " "))));
            numbers.add(new Inline.Words(String.join("; ", entry.see())));
        }
        return new Listing.Line(opens, List.of(new Inline.Words(entry.words() + (found.isEmpty() ? "," : ""))), numbers);
    }
}
