package exergue.edition.apparatus;

import exergue.edition.BookOrder;
import exergue.edition.BookOrder.TypeInBook;
import exergue.edition.BookWords;
import exergue.edition.EditionCodes;
import exergue.edition.Listing;
import exergue.finding.Finding;
import exergue.finding.NearMiss;
import exergue.legend.Legend;
import exergue.legend.LegendParser;
import exergue.model.Apparatus.See;
import exergue.model.BookWord;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Collection;
import exergue.model.FindSpot;
import exergue.model.IndexStyle;
import exergue.model.Mint;
import exergue.model.Ruler;
import exergue.model.Side;
import exergue.model.Type;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * The indexes: mints; rulers; legends; types and attributes; find-spots by their coarse names; collections and earlier
 * owners; countermarks. An index without entries is left out.
 */
public final class Indexes {

    private final Catalogue catalogue;
    private final Index mints = new Index("mints", BookWord.INDEX_MINTS);
    private final Index rulers = new Index("rulers", BookWord.INDEX_RULERS);
    private final Index legends = new Index("legends", BookWord.INDEX_LEGENDS);
    private final Index types = new Index("types", BookWord.INDEX_TYPES);
    private final Index spots = new Index("find-spots", BookWord.INDEX_FIND_SPOTS);
    private final Index owners = new Index("collections", BookWord.INDEX_COLLECTIONS);
    private final Index countermarks = new Index("countermarks", BookWord.INDEX_COUNTERMARKS);
    private final List<Finding> findings = new ArrayList<>();

    private Indexes(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    public static Indexes of(Catalogue catalogue, BookOrder order) {
        Indexes indexes = new Indexes(catalogue);
        for (TypeInBook inBook : order.types()) {
            inBook.coins().forEach(coin -> indexes.add(coin, inBook.type()));
        }
        catalogue.apparatus().see().forEach(indexes::see);
        return indexes;
    }

    /** See-references that lead nowhere. */
    public List<Finding> findings() {
        return List.copyOf(findings);
    }

    public List<Listing> listings(Locators locators, BookWords words) {
        IndexStyle style = catalogue.style().indexes();
        IndexOrder order = new IndexOrder(words.language(), style.greek());
        return all().filter(index -> !index.isEmpty())
                .map(index -> index.listing(order, locators, style.by(), words)).toList();
    }

    private Stream<Index> all() {
        return Stream.of(mints, rulers, legends, types, spots, owners, countermarks);
    }

    private void add(Coin coin, Type type) {
        String mint = type.mint().value();
        mints.add(Optional.ofNullable(catalogue.mints().get(mint)).map(Mint::name).map(Written::value).orElse(mint), coin);
        type.ruler().map(Written::value).map(id -> Optional.ofNullable(catalogue.rulers().get(id)).map(Ruler::name)
                .map(Written::value).orElse(id)).ifPresent(name -> rulers.add(name, coin));
        legend(coin.obverse(), type.obverse(), coin);
        legend(coin.reverse(), type.reverse(), coin);
        type.keywords().forEach(keyword -> types.add(keyword.value(), coin));
        coin.find().map(find -> find.spot().value()).map(id -> Optional.ofNullable(catalogue.findSpots().get(id))
                .map(FindSpot::name).map(Written::value).orElse(id)).ifPresent(name -> spots.add(name, coin));
        coin.holding().map(holding -> holding.collection().value()).map(id -> Optional
                .ofNullable(catalogue.collections().get(id)).map(Collection::name).map(Written::value).orElse(id))
                .ifPresent(name -> owners.add(name, coin));
        coin.provenance().forEach(step -> step.under().ifPresent(under -> owners.add(under.value(), coin)));
        coin.countermark().ifPresent(mark -> countermarks.add(mark.value(), coin));
    }

    /** The coin's own legend where it has one; the brackets of an editor do not make another legend of it. */
    private void legend(Side own, Side ofType, Coin coin) {
        own.legend().or(ofType::legend).map(Written::value)
                .ifPresent(legend -> legends.add(legend.sortKey(), legend.printed(), coin));
    }

    private void see(See see) {
        boolean found = false;
        for (Index index : all().toList()) {
            boolean here = index.targets().containsKey(see.to().value());
            if (here) {
                index.see(see, index == legends ? Indexes::legendKey : words -> words);
            }
            found |= here;
        }
        if (!found) {
            Set<String> known = new TreeSet<>();
            all().forEach(index -> known.addAll(index.targets().keySet()));
            findings.add(Finding.of(EditionCodes.SEE_LEADS_NOWHERE, see.to().place(), "see",
                    "“" + see.from() + "” sends the reader to “" + see.to() + "”, which is in no index.",
                    NearMiss.of(see.to().value(), known).map(near -> "Did you mean “" + near + "”?")
                            .orElse("Write the entry exactly as the index has it, or take the see-reference away.")));
        }
    }

    private static String legendKey(String text) {
        Legend legend = LegendParser.parse(text).legend();
        return legend.sortKey();
    }
}
