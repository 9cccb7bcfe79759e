package exergue.review.content;

import java.util.Locale;
import java.util.Map;

/**
 * Entries of one kind.
 *
 * @param name  as the model names them: {@code coins}
 * @param one   what one of them is called: "coin"
 * @param many  heading over several: "Coins"
 */
public record Section(String name, String one, String many) implements Comparable<Section> {

    private static final Map<String, Section> KNOWN = Map.ofEntries(
            known("coins", "coin", "Coins"), known("types", "type", "Types"), known("mints", "mint", "Mints"),
            known("rulers", "ruler", "Rulers"), known("findSpots", "find-spot", "Find-spots"),
            known("collections", "collection", "Collections"), known("conventions", "convention", "Measuring conventions"),
            known("works", "work", "Works"), known("chapters", "chapter", "Chapters"), known("title", "title page", "Title page"),
            known("plan", "order of the parts", "Order of the parts"), known("style", "house style", "House style"),
            known("apparatus", "indexes and former numbers", "Indexes and former numbers"),
            known("templates", "templates", "Templates"), known("citationStyle", "citation style", "Citation style"),
            known("groups", "group", "Groups of coins"),
            known("files", "file", "Pictures and other files"));

    public static final Section COINS = of("coins");
    public static final Section TYPES = of("types");
    /** What is no text of the catalogue: photographs, templates. */
    public static final Section FILES = of("files");

    private static Map.Entry<String, Section> known(String name, String one, String many) {
        return Map.entry(name, new Section(name, one, many));
    }

    /** @param name a component of the catalogue; one that is not known is called by its own name */
    public static Section of(String name) {
        Section known = KNOWN.get(name);
        if (known != null) {
            return known;
        }
        String words = spelt(name);
        return new Section(name, words, words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1));
    }

    /** "also measured" for {@code alsoMeasured} */
    static String spelt(String name) {
        return name.replaceAll("([a-z])([A-Z])", "$1 $2").toLowerCase(Locale.ROOT);
    }

    /** All of them in a sentence, or the only one: "coins", "house style". */
    public String all() {
        return many.substring(0, 1).toLowerCase(Locale.ROOT) + many.substring(1);
    }

    /** Coins first, then types, files last; the rest by name. */
    @Override
    public int compareTo(Section other) {
        int byRank = Integer.compare(rank(), other.rank());
        return byRank != 0 ? byRank : name.compareTo(other.name);
    }

    private int rank() {
        return switch (name) {
            case "coins" -> 0;
            case "types" -> 1;
            case "files" -> 3;
            default -> 2;
        };
    }
}
