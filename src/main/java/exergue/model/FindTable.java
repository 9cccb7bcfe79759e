package exergue.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The tables that the book makes of a find-spot, each with the id by which texts refer to it: {@code [table:terrace-types]}. */
public enum FindTable {
    TYPES(BookWord.BY_TYPE), PERIODS(BookWord.BY_PERIOD), COMPARED(BookWord.WITH_OTHER_FINDS), CONTEXTS(BookWord.BY_CONTEXT);

    private final BookWord word;

    FindTable(BookWord word) {
        this.word = word;
    }

    /** What its caption says after the name of the find-spot: "by type". */
    public BookWord word() {
        return word;
    }

    public Written<String> id(FindSpot spot) {
        return new Written<>(spot.id().value() + "-" + name().toLowerCase(Locale.ROOT), spot.id().place());
    }

    /** Those that the book has of a find-spot, in their order; none where the plan does not ask for them. */
    public static List<FindTable> of(FindSpot spot, Catalogue catalogue) {
        List<Coin.Find> finds = catalogue.coins().stream().flatMap(coin -> coin.find().stream())
                .filter(find -> find.spot().value().equals(spot.id().value())).toList();
        if (spot.kind().isEmpty() || finds.isEmpty() || !catalogue.plan().has("finds")) {
            return List.of();
        }
        List<FindTable> tables = new ArrayList<>(List.of(TYPES, PERIODS));
        if (spot.compared().filter(elsewhere -> elsewhere.all() > 0).isPresent()) {
            tables.add(COMPARED);
        }
        if (finds.stream().anyMatch(find -> find.context().isPresent())) {
            tables.add(CONTEXTS);
        }
        return List.copyOf(tables);
    }
}
