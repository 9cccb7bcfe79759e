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
import java.util.stream.Collectors;

/**
 * The words by which a list or find-spots.yaml name the very place of a find. They belong in no entry and in no message; the coarse
 * names of find-spots may stand anywhere, and so may exact places that the catalogue prints.
 */
final class ExactPlaces {

    /** Shorter words are in too many others. */
    private static final int LEAST = 4;

    /** Matches nothing where there are none. */
    private final Pattern words;

    private ExactPlaces(Set<String> words) {
        String any = words.stream().sorted(Comparator.comparingInt(String::length).reversed().thenComparing(Comparator.naturalOrder()))
                .map(Pattern::quote).collect(Collectors.joining("|"));
        this.words = Pattern.compile(words.isEmpty() ? "(?!)" : "(?<![\\p{L}\\p{N}])(?:" + any + ")(?![\\p{L}\\p{N}])",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /** Those that are declared. */
    static ExactPlaces of(Catalogue catalogue, ListPlan plan) {
        return of(catalogue, plan, List.of());
    }

    /** Those that are declared, and what else the list has in its cells of find-spots. */
    static ExactPlaces of(Catalogue catalogue, ListPlan plan, Sheet sheet, List<Column> columns) {
        return of(catalogue, plan, columns.stream().filter(column -> column.holds() == ColumnContent.FIND_SPOT)
                .flatMap(column -> sheet.rows().stream().map(row -> row.cell(column.index()).text())
                        .filter(text -> column.answer(text, plan).isEmpty())).toList());
    }

    private static ExactPlaces of(Catalogue catalogue, ListPlan plan, List<String> cells) {
        List<String> all = new ArrayList<>(cells);
        for (ListColumn column : plan.columns().values()) {
            if (column.holds() == ColumnContent.FIND_SPOT) {
                all.addAll(column.text().words().keySet());
            }
        }
        return of(catalogue, all);
    }

    /** Those of the catalogue and others. */
    static ExactPlaces of(Catalogue catalogue, List<String> others) {
        Set<String> secret = new LinkedHashSet<>(others);
        catalogue.findSpots().values().stream().filter(spot -> !spot.mayPrint()).forEach(spot ->
                spot.exact().ifPresent(exact -> secret.add(exact.value())));
        secret.removeIf(one -> one.length() < LEAST || catalogue.findSpots().values().stream().anyMatch(spot -> isCoarse(one, spot)));
        return new ExactPlaces(secret);
    }

    private static boolean isCoarse(String words, FindSpot spot) {
        return spot.id().value().equalsIgnoreCase(words) || spot.name().value().equalsIgnoreCase(words);
    }

    boolean namedIn(String text) {
        return words.matcher(text).find();
    }

    /** The same text with dots for each letter of such words. */
    String hidden(String text) {
        return words.matcher(text).replaceAll(found -> Hidden.dots(found.group()));
    }
}
