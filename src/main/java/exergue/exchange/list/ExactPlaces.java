package exergue.exchange.list;

import exergue.model.Catalogue;
import exergue.model.FindSpot;
import exergue.source.list.ColumnContent;
import exergue.source.list.ListColumn;
import exergue.source.list.ListPlan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The words by which a list or find-spots.yaml name the very place of a find. They belong in no entry and in no message; the coarse
 * names of find-spots may stand anywhere, and so may exact places that the catalogue prints.
 */
final class ExactPlaces {

    /** Shorter words are in too many others. */
    private static final int LEAST = 4;

    private final List<Pattern> words;

    private ExactPlaces(Set<String> words) {
        this.words = words.stream().sorted(Comparator.comparingInt(String::length).reversed().thenComparing(Comparator.naturalOrder()))
                .map(one -> Pattern.compile("(?<![\\p{L}\\p{N}])" + Pattern.quote(one) + "(?![\\p{L}\\p{N}])",
                        Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE)).toList();
    }

    static ExactPlaces of(Catalogue catalogue, ListPlan plan) {
        List<String> all = new ArrayList<>();
        catalogue.findSpots().values().stream().filter(spot -> !spot.mayPrint()).forEach(spot ->
                spot.exact().ifPresent(exact -> all.add(exact.value())));
        for (ListColumn column : plan.columns().values()) {
            if (column.holds() == ColumnContent.FIND_SPOT) {
                all.addAll(column.text().words().keySet());
            }
        }
        Set<String> secret = new LinkedHashSet<>(all);
        secret.removeIf(one -> one.length() < LEAST || catalogue.findSpots().values().stream().anyMatch(spot -> isCoarse(one, spot)));
        return new ExactPlaces(secret);
    }

    private static boolean isCoarse(String words, FindSpot spot) {
        return spot.id().value().equalsIgnoreCase(words) || spot.name().value().equalsIgnoreCase(words);
    }

    boolean namedIn(String text) {
        return words.stream().anyMatch(one -> one.matcher(text).find());
    }

    /** The same text with dots for each letter of such words. */
    String hidden(String text) {
        String shown = text;
        for (Pattern one : words) {
            shown = one.matcher(shown).replaceAll(found -> Hidden.dots(found.group()));
        }
        return shown;
    }
}
