package exergue.edition.apparatus;

import exergue.edition.Anchors;
import exergue.edition.BookOrder;
import exergue.edition.BookOrder.TypeInBook;
import exergue.edition.BookWords;
import exergue.edition.Listing;
import exergue.model.Apparatus.FormerNumber;
import exergue.model.BookWord;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Collection;
import exergue.model.FindSpot;
import exergue.model.Inline;
import exergue.model.NaturalOrder;
import exergue.model.Reference;
import exergue.model.Reference.Relation;
import exergue.model.Work;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * From numbers elsewhere to catalogue numbers: for each work that is cited, each collection, each find-spot and an
 * earlier edition, in this order. Numbers are in natural order and as they were written; ranges are kept.
 *
 * <p>Under a work's number the very coin comes first, in bold; then the other coins of the type; then, with a word
 * before them, variants and coins of the same dies. What a work has not is not in its concordance.
 */
public final class Concordances {

    /** Coins by how the work's number relates to them, in the order they are printed. */
    private static final List<Relation> PRINTED = List.of(Relation.THIS_COIN, Relation.SAME_TYPE, Relation.VARIANT,
            Relation.SAME_DIES);

    private final Catalogue catalogue;
    private final BookOrder order;
    private final Locators locators;
    private final BookWords words;

    public Concordances(Catalogue catalogue, BookOrder order, Locators locators, BookWords words) {
        this.catalogue = catalogue;
        this.order = order;
        this.locators = locators;
        this.words = words;
    }

    /** @param works the cited works, in the order of the book */
    public List<Listing> listings(List<Work> works) {
        List<Listing> all = new ArrayList<>();
        Map<String, Map<String, Map<Relation, List<Coin>>>> cited = cited();
        for (Work work : works) {
            Optional.ofNullable(cited.get(work.id().value())).ifPresent(rows -> all.add(listing("work",
                    work.id().value(), work.sign().value(), rows.entrySet().stream()
                            .map(row -> line(row.getKey(), related(row.getValue()))).toList())));
        }
        byId(catalogue.collections(), Collection::name, numbersOfCollections(), "collection", all);
        byId(catalogue.findSpots(), FindSpot::name, numbersOfFinds(), "find", all);
        if (!catalogue.apparatus().former().isEmpty()) {
            all.add(listing("former", "numbers", catalogue.apparatus().edition().map(Written::value)
                    .orElse(words.of(BookWord.FORMER_NUMBERS)), former()));
        }
        return all;
    }

    private Map<String, Map<String, Map<Relation, List<Coin>>>> cited() {
        Map<String, Map<String, Map<Relation, List<Coin>>>> cited = new HashMap<>();
        for (TypeInBook inBook : order.types()) {
            inBook.type().references().forEach(reference -> cite(reference, inBook.coins(), cited));
            for (Coin coin : inBook.coins()) {
                coin.references().forEach(reference -> cite(reference, List.of(coin), cited));
            }
        }
        return cited;
    }

    private static void cite(Reference reference, List<Coin> coins,
                             Map<String, Map<String, Map<Relation, List<Coin>>>> cited) {
        if (reference.relation() != Relation.NOT_IN) {
            cited.computeIfAbsent(reference.work().value(), work -> new TreeMap<>(NaturalOrder.INSTANCE))
                    .computeIfAbsent(reference.number().value(), number -> new HashMap<>())
                    .computeIfAbsent(reference.relation(), relation -> new ArrayList<>()).addAll(coins);
        }
    }

    private List<Inline> related(Map<Relation, List<Coin>> coins) {
        List<Inline> runs = new ArrayList<>();
        List<Coin> very = coins.getOrDefault(Relation.THIS_COIN, List.of());
        for (Relation relation : PRINTED) {
            List<Coin> related = new ArrayList<>(coins.getOrDefault(relation, List.of()));
            if (relation != Relation.THIS_COIN) {
                related.removeAll(very);
            }
            if (!related.isEmpty()) {
                runs.add(new Inline.Words((runs.isEmpty() ? "" : "; ") + label(relation)));
                List<Inline> numbers = locators.numbers(related);
                runs.addAll(relation == Relation.THIS_COIN ? List.of(new Inline.Strong(numbers)) : numbers);
            }
        }
        return runs.isEmpty() ? List.of(Locators.NONE) : runs;
    }

    private String label(Relation relation) {
        return switch (relation) {
            case VARIANT -> words.of(BookWord.VAR) + "\u00A0";
            case SAME_DIES -> words.of(BookWord.SAME_DIES) + "\u00A0";
            default -> "";
        };
    }

    private <T> void byId(Map<String, T> declared, Function<T, Written<String>> name,
                          Map<String, Map<String, List<Coin>>> numbers, String kind, List<Listing> into) {
        declared.forEach((id, entry) -> Optional.ofNullable(numbers.get(id)).ifPresent(rows ->
                into.add(listing(kind, id, name.apply(entry).value(), rows.entrySet().stream()
                        .map(row -> line(row.getKey(), locators.numbers(row.getValue()))).toList()))));
    }

    private Map<String, Map<String, List<Coin>>> numbersOfCollections() {
        Map<String, Map<String, List<Coin>>> numbers = new HashMap<>();
        each(coin -> coin.holding().ifPresent(holding -> holding.number().ifPresent(number ->
                put(holding.collection().value(), number.value(), coin, numbers))));
        return numbers;
    }

    private Map<String, Map<String, List<Coin>>> numbersOfFinds() {
        Map<String, Map<String, List<Coin>>> numbers = new HashMap<>();
        each(coin -> coin.find().ifPresent(find -> find.number().ifPresent(number ->
                put(find.spot().value(), number.value(), coin, numbers))));
        return numbers;
    }

    private void each(Consumer<Coin> action) {
        order.types().forEach(inBook -> inBook.coins().forEach(action));
    }

    private static void put(String id, String number, Coin coin, Map<String, Map<String, List<Coin>>> numbers) {
        numbers.computeIfAbsent(id, of -> new TreeMap<>(NaturalOrder.INSTANCE))
                .computeIfAbsent(number, of -> new ArrayList<>()).add(coin);
    }

    private List<Listing.Line> former() {
        Map<String, Coin> coins = new HashMap<>();
        each(coin -> coins.put(coin.id().value(), coin));
        Map<Integer, List<Coin>> numbers = new TreeMap<>();
        for (FormerNumber former : catalogue.apparatus().former()) {
            List<Coin> same = numbers.computeIfAbsent(former.number().value(), number -> new ArrayList<>());
            Optional.ofNullable(coins.get(former.coin().value())).ifPresent(same::add);
        }
        List<Listing.Line> lines = new ArrayList<>();
        numbers.forEach((number, now) -> lines.add(line(String.valueOf(number),
                now.isEmpty() ? List.of(Locators.NONE) : locators.numbers(now))));
        return lines;
    }

    private static Listing.Line line(String number, List<Inline> found) {
        return new Listing.Line(false, List.of(new Inline.Words(number)), found);
    }

    private Listing listing(String kind, String id, String heading, List<Listing.Line> lines) {
        return new Listing(Anchors.listing("concordance." + kind, id), List.of(new Inline.Words(heading)),
                Optional.of(new Listing.Heads(words.of(BookWord.NUMBER_HEAD), words.of(BookWord.THIS_CATALOGUE))), lines);
    }
}
