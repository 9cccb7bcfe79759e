package exergue.model;

import exergue.measure.Convention;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything the tree holds, bound to the words of the trade. Maps keep the order of their files, which is the
 * order of the book; types and coins come sorted by id in natural order (lk-9 before lk-10).
 *
 * @param templates     the set that lays the book out, and the catalogue's own files
 * @param citationStyle path of the style in which works from a reference manager are set; empty for the default one
 * @param groups        of coins that are studied together, by id
 */
public record Catalogue(TitleMatter title, BookPlan plan, HouseStyle style,
                        Map<String, Written<Convention>> conventions, Map<String, Work> works,
                        Map<String, Mint> mints, Map<String, Ruler> rulers, Map<String, FindSpot> findSpots,
                        Map<String, Collection> collections, List<Type> types, List<Coin> coins,
                        Map<String, Chapter> chapters, Apparatus apparatus, TemplateChoice templates,
                        Optional<Written<String>> citationStyle, Map<String, CoinGroup> groups) {

    public Catalogue {
        conventions = Collections.unmodifiableMap(new LinkedHashMap<>(conventions));
        works = Collections.unmodifiableMap(new LinkedHashMap<>(works));
        mints = Collections.unmodifiableMap(new LinkedHashMap<>(mints));
        rulers = Collections.unmodifiableMap(new LinkedHashMap<>(rulers));
        findSpots = Collections.unmodifiableMap(new LinkedHashMap<>(findSpots));
        collections = Collections.unmodifiableMap(new LinkedHashMap<>(collections));
        chapters = Collections.unmodifiableMap(new LinkedHashMap<>(chapters));
        groups = Collections.unmodifiableMap(new LinkedHashMap<>(groups));
        types = List.copyOf(types);
        coins = List.copyOf(coins);
    }

    /** The same with other types and coins, both sorted by id. */
    public Catalogue with(List<Type> otherTypes, List<Coin> otherCoins) {
        return new Catalogue(title, plan, style, conventions, works, mints, rulers, findSpots, collections, otherTypes, otherCoins,
                chapters, apparatus, templates, citationStyle, groups);
    }
}
