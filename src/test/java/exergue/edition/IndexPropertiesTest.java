package exergue.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Inline;
import exergue.model.Reference;
import exergue.model.Reference.Relation;
import exergue.model.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Indexes and concordances against the data they are made from. */
class IndexPropertiesTest {

    private static final List<String> MINTS = List.of("Arethe", "Lykaia", "Peiris");

    private static Catalogue catalogue(long seed, int coins) {
        Random random = new Random(seed);
        CatalogueBuilder catalogue = new CatalogueBuilder().parts("indexes", "concordances").work("h", "Hallowby", "");
        MINTS.forEach(name -> catalogue.mint("m-" + name.toLowerCase(java.util.Locale.ROOT), name));
        for (int i = 0; i < 5; i++) {
            TypeBuilder type = catalogue.type("t" + i).at("m-" + MINTS.get(random.nextInt(3)).toLowerCase(java.util.Locale.ROOT), "");
            if (random.nextBoolean()) {
                type.reference("h", String.valueOf(random.nextInt(6)), Relation.values()[random.nextInt(5)]);
            }
        }
        for (int i = 0; i < coins; i++) {
            CoinBuilder coin = catalogue.coin("c" + i, "t" + random.nextInt(5));
            if (random.nextInt(3) == 0) {
                coin.number(1 + i * 3);
            }
            if (random.nextInt(3) == 0) {
                coin.reference("h", String.valueOf(random.nextInt(6)), Relation.values()[random.nextInt(5)]);
            }
        }
        return catalogue.build();
    }

    private static Map<String, Set<Integer>> lines(Catalogue catalogue, String listing) {
        Map<String, Set<Integer>> lines = new TreeMap<>();
        Read.book(catalogue).body().stream().map(Part.Listings.class::cast).flatMap(part -> part.listings().stream())
                .filter(list -> list.id().equals(listing)).flatMap(list -> list.lines().stream())
                .forEach(line -> lines.put(Inline.plain(line.words()), numbers(Inline.plain(line.numbers()))));
        return lines;
    }

    /** "1–3, 5" as its numbers. */
    private static Set<Integer> numbers(String words) {
        List<Integer> numbers = new ArrayList<>();
        for (String run : words.replaceAll("[^0-9–]+", " ").strip().split(" +")) {
            String[] ends = run.split("–");
            if (ends.length > 0 && !ends[0].isEmpty()) {
                for (int n = Integer.parseInt(ends[0]); n <= Integer.parseInt(ends[ends.length - 1]); n++) {
                    numbers.add(n);
                }
            }
        }
        return new TreeSet<>(numbers);
    }

    private static Map<String, Type> types(Catalogue catalogue) {
        return Editor.types(catalogue);
    }

    @Property(tries = 150)
    void everyCoinsMintIsInTheIndexAtItsNumberAndNowhereElse(@ForAll long seed, @ForAll @IntRange(max = 20) int coins) {
        Catalogue catalogue = catalogue(seed, coins);
        Numbering numbering = Numbering.of(BookOrder.of(catalogue));
        Map<String, Set<Integer>> expected = new TreeMap<>();
        for (Coin coin : catalogue.coins()) {
            String mint = catalogue.mints().get(types(catalogue).get(coin.type().value()).mint().value()).name().value();
            expected.computeIfAbsent(mint, name -> new TreeSet<>()).add(numbering.of(coin.id().value()).orElseThrow());
        }
        assertEquals(expected, lines(catalogue, "index.mints"));
    }

    @Property(tries = 150)
    void everyReferenceStandsInItsConcordanceWithTheCoinsItIsOf(@ForAll long seed, @ForAll @IntRange(max = 20) int coins) {
        Catalogue catalogue = catalogue(seed, coins);
        Numbering numbering = Numbering.of(BookOrder.of(catalogue));
        Map<String, Set<Integer>> expected = new TreeMap<>();
        for (Coin coin : catalogue.coins()) {
            Type type = types(catalogue).get(coin.type().value());
            List<Reference> all = new ArrayList<>(coin.references());
            all.addAll(type.references());
            all.stream().filter(reference -> reference.relation() != Relation.NOT_IN).forEach(reference -> expected
                    .computeIfAbsent(reference.number().value(), number -> new TreeSet<>())
                    .add(numbering.of(coin.id().value()).orElseThrow()));
        }
        Map<String, Set<Integer>> lines = lines(catalogue, "concordance.work.h");
        lines.values().removeIf(Set::isEmpty);
        assertEquals(expected.keySet(), lines.keySet());
        expected.forEach((number, found) -> assertTrue(lines.get(number).containsAll(found) && found.containsAll(lines.get(number)),
                number + ": " + found + " and " + lines.get(number)));
    }
}
