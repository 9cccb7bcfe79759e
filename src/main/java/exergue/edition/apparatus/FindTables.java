package exergue.edition.apparatus;

import exergue.edition.BookOrder;
import exergue.edition.BookOrder.TypeInBook;
import exergue.dating.DatePrinter;
import exergue.edition.BookWords;
import exergue.finding.Place;
import exergue.model.BookWord;
import exergue.model.Caption;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.FindSpot;
import exergue.model.FindTable;
import exergue.model.Inline;
import exergue.model.Metal;
import exergue.model.NaturalOrder;
import exergue.model.Prose;
import exergue.model.Type;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Tables for every find-spot that says of what kind it is: what was found by type, by period and by context; except for
 * a hoard, which was not lost coin by coin, with what was lost in each period.
 */
public final class FindTables {

    private static final String NOTHING = "–";

    private final Catalogue catalogue;
    private final BookOrder order;
    private final Locators locators;
    private final BookWords words;
    private final Place place;

    public FindTables(Catalogue catalogue, BookOrder order, Locators locators, BookWords words, Place place) {
        this.catalogue = catalogue;
        this.order = order;
        this.locators = locators;
        this.words = words;
        this.place = place;
    }

    /** Coins of one type at one find-spot. */
    private record Found(Type type, List<Coin> coins) { }

    /** Find-spots in the order of their file. */
    public List<Prose> blocks() {
        List<Prose> blocks = new ArrayList<>();
        for (FindSpot spot : catalogue.findSpots().values()) {
            List<Found> found = found(spot);
            if (spot.kind().isPresent() && !found.isEmpty()) {
                lossNote(spot.kind().get().value(), blocks);
                blocks.add(new Prose.Heading(2, List.of(words(spot.name().value())), place));
                spot.closed().ifPresent(closed -> blocks.add(new Prose.Paragraph(List.of(words(words.of(BookWord.CLOSING_DATE)
                        + words.language().colon() + DatePrinter.print(closed.value(), catalogue.style().dates()))), place)));
                for (FindTable table : FindTable.of(spot, catalogue)) {
                    add(table, spot, found, blocks);
                }
            }
        }
        return List.copyOf(blocks);
    }

    private void add(FindTable table, FindSpot spot, List<Found> found, List<Prose> blocks) {
        switch (table) {
            case TYPES -> blocks.add(byType(found).captioned(caption(table, spot)));
            case PERIODS -> blocks.add(new PeriodTable(catalogue, words, place).of(spot.kind().orElseThrow().value(), periods(found))
                    .captioned(caption(table, spot)));
            case COMPARED -> {
                ComparedFinds compared = new ComparedFinds(catalogue, words, place);
                blocks.add(compared.said(spot.compared().orElseThrow()));
                blocks.add(compared.of(periods(found), spot.compared().orElseThrow()).captioned(caption(table, spot)));
            }
            case CONTEXTS -> blocks.add(byContext(found).captioned(caption(table, spot)));
        }
    }

    /** "The Terrace: by type." */
    private Optional<Caption> caption(FindTable table, FindSpot spot) {
        String text = spot.name().value() + words.language().colon() + words.of(table.word()) + ".";
        return Optional.of(new Caption(Caption.Kind.TABLE, Optional.of(table.id(spot)), List.of(words(text)), Optional.empty()));
    }

    /** Said once, before the first table that has such figures. */
    private void lossNote(FindSpot.Kind kind, List<Prose> blocks) {
        Prose note = new Prose.Paragraph(List.of(words(words.of(BookWord.LOSS_NOTE))), place);
        if (kind != FindSpot.Kind.HOARD && !blocks.contains(note)) {
            blocks.add(0, note);
        }
    }

    private List<Found> found(FindSpot spot) {
        List<Found> found = new ArrayList<>();
        for (TypeInBook inBook : order.types()) {
            List<Coin> here = inBook.coins().stream().filter(coin -> coin.find()
                    .filter(find -> find.spot().value().equals(spot.id().value())).isPresent()).toList();
            if (!here.isEmpty()) {
                found.add(new Found(inBook.type(), here));
            }
        }
        return found;
    }

    /** Mint and period stand where they change. */
    private Prose.Table byType(List<Found> found) {
        List<List<List<Inline>>> rows = new ArrayList<>();
        int all = 0;
        String mint = "";
        String period = "";
        for (Found type : found) {
            Metal metal = catalogue.style().metals().get(type.type().metal().value());
            String sign = metal == null ? type.type().metal().value() : metal.sign();
            rows.add(List.of(cell(mint.equals(mint(type.type())) ? "" : mint(type.type())),
                    cell(mint.equals(mint(type.type())) && period.equals(period(type.type())) ? "" : period(type.type())),
                    cell(type.type().denomination().value()), cell(sign), cell(type.coins().size()),
                    locators.numbers(type.coins())));
            mint = mint(type.type());
            period = period(type.type());
            all += type.coins().size();
        }
        rows.add(List.of(cell(words.of(BookWord.TOTAL)), cell(""), cell(""), cell(""), cell(all), cell("")));
        return table(List.of("left", "left", "left", "left", "right", "left"),
                List.of(BookWord.MINT, BookWord.PERIOD, BookWord.DENOMINATION, BookWord.METAL, BookWord.COINS,
                        BookWord.NUMBER_HEAD), rows);
    }

    private Prose.Table byContext(List<Found> found) {
        Map<String, List<Coin>> contexts = new TreeMap<>(Comparator.comparing(String::isEmpty)
                .thenComparing(NaturalOrder.INSTANCE));
        found.forEach(type -> type.coins().forEach(coin -> contexts.computeIfAbsent(coin.find()
                .flatMap(Coin.Find::context).map(Written::value).orElse(""), context -> new ArrayList<>()).add(coin)));
        List<List<List<Inline>>> rows = new ArrayList<>();
        contexts.forEach((context, coins) -> rows.add(List.of(
                cell(context.isEmpty() ? NOTHING : context), cell(coins.size()), locators.numbers(coins))));
        return table(List.of("left", "right", "left"), List.of(BookWord.CONTEXT, BookWord.COINS, BookWord.NUMBER_HEAD), rows);
    }

    /** Coins of each period, in the order of rulers.yaml; those of types without one under an empty id, last. */
    private Map<String, Integer> periods(List<Found> found) {
        Map<String, Integer> counted = new HashMap<>();
        found.forEach(type -> counted.merge(type.type().ruler().map(Written::value).orElse(""), type.coins().size(),
                Integer::sum));
        Map<String, Integer> inOrder = new LinkedHashMap<>();
        catalogue.rulers().keySet().stream().filter(counted::containsKey)
                .forEach(id -> inOrder.put(id, counted.get(id)));
        counted.keySet().stream().sorted(Comparator.comparing(String::isEmpty).thenComparing(NaturalOrder.INSTANCE))
                .forEach(id -> inOrder.putIfAbsent(id, counted.get(id)));
        return inOrder;
    }

    private Prose.Table table(List<String> align, List<BookWord> heads, List<List<List<Inline>>> rows) {
        return new Prose.Table(align, heads.stream().map(head -> cell(words.of(head))).toList(), rows, place);
    }

    private String mint(Type type) {
        String id = type.mint().value();
        return Optional.ofNullable(catalogue.mints().get(id)).map(mint -> mint.name().value()).orElse(id);
    }

    private String period(Type type) {
        return type.ruler().map(Written::value).map(id -> Optional.ofNullable(catalogue.rulers().get(id))
                .map(ruler -> ruler.name().value()).orElse(id)).orElse(NOTHING);
    }

    private static List<Inline> cell(int count) {
        return cell(String.valueOf(count));
    }

    private static List<Inline> cell(String text) {
        return List.of(words(text));
    }

    private static Inline words(String text) {
        return new Inline.Words(text);
    }
}
