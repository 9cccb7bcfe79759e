package exergue.exchange.list;

import exergue.model.Catalogue;
import exergue.model.Damage;
import exergue.model.Type;
import exergue.source.list.ColumnContent;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** By which names the catalogue knows its mints, types, collections and the like; capitals do not matter. */
final class Names {

    /** What goes by a name of the catalogue. */
    static final Set<ColumnContent> HAS = EnumSet.of(ColumnContent.MINT, ColumnContent.RULER, ColumnContent.METAL, ColumnContent.DENOMINATION,
            ColumnContent.TYPE, ColumnContent.COLLECTION, ColumnContent.FIND_SPOT, ColumnContent.DAMAGE);

    private final Map<ColumnContent, Map<String, String>> ids = new EnumMap<>(ColumnContent.class);
    private final Map<ColumnContent, Collection<String>> offered = new EnumMap<>(ColumnContent.class);

    Names(Catalogue catalogue) {
        catalogue.mints().forEach((id, mint) -> add(ColumnContent.MINT, id, id, mint.name().value()));
        catalogue.rulers().forEach((id, ruler) -> add(ColumnContent.RULER, id, id, ruler.name().value()));
        catalogue.collections().forEach((id, one) -> add(ColumnContent.COLLECTION, id, id, one.name().value(), one.sign().value()));
        catalogue.findSpots().forEach((id, spot) -> add(ColumnContent.FIND_SPOT, id, id, spot.name().value()));
        for (Type type : catalogue.types()) {
            add(ColumnContent.TYPE, type.id().value(), type.id().value());
            add(ColumnContent.METAL, type.metal().value(), type.metal().value());
            add(ColumnContent.DENOMINATION, folded(type.denomination().value()), type.denomination().value());
        }
        Arrays.stream(Damage.values()).forEach(damage -> add(ColumnContent.DAMAGE, damage.word(), damage.word()));
        catalogue.style().metals().keySet().forEach(metal -> add(ColumnContent.METAL, metal, metal));
    }

    private void add(ColumnContent content, String id, String... names) {
        Map<String, String> known = ids.computeIfAbsent(content, key -> new LinkedHashMap<>());
        for (String name : names) {
            known.putIfAbsent(folded(name), id);
        }
        offered.computeIfAbsent(content, key -> new LinkedHashSet<>()).addAll(Arrays.asList(names));
    }

    static String folded(String text) {
        return text.toLowerCase(Locale.ROOT);
    }

    /** Its id in the catalogue; of a denomination, its words in small letters. */
    Optional<String> id(ColumnContent content, String name) {
        return Optional.ofNullable(ids.getOrDefault(content, Map.of()).get(folded(name)));
    }

    Collection<String> of(ColumnContent content) {
        return offered.getOrDefault(content, List.of());
    }
}
