package exergue.review;

import exergue.model.Apparatus;
import exergue.model.Catalogue;
import exergue.model.Chapter;
import exergue.model.Coin;
import exergue.model.NaturalOrder;
import exergue.model.Type;
import exergue.source.works.WorksReader;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * One of two states, in which a file that cannot be read is taken to say what it says in the other; what neither state can
 * read is left out of both. So a broken entry shows neither as a coin of which everything was taken out, nor in counts and
 * numbers.
 *
 * @param unread       files that cannot be read in this state
 * @param unreadBeside those of the other
 */
record Legible(Catalogue own, Set<String> unread, Catalogue other, Set<String> unreadBeside) {

    /** The files that are not compared. */
    static Set<String> notCompared(Set<String> unread, Set<String> unreadBeside) {
        Set<String> all = new TreeSet<>(unread);
        all.addAll(unreadBeside);
        return all;
    }

    Catalogue catalogue() {
        if (unread.isEmpty() && unreadBeside.isEmpty()) {
            return own;
        }
        return new Catalogue(own.title(), own.plan(), from("house-style.yaml").style(), from("conventions.yaml").conventions(),
                from(WorksReader.FILES).works(), from("mints.yaml").mints(), from("rulers.yaml").rulers(), from("find-spots.yaml").findSpots(),
                from("collections.yaml").collections(),
                entries(Catalogue::types, type -> type.place().file(), (Type type) -> type.id().value()),
                entries(Catalogue::coins, coin -> coin.place().file(), (Coin coin) -> coin.id().value()),
                chapters(), apparatus(), own.templates(), own.citationStyle(), own.groups());
    }

    private Catalogue from(String file) {
        return from(List.of(file));
    }

    private Catalogue from(List<String> files) {
        return files.stream().anyMatch(unread::contains) ? other : own;
    }

    private Apparatus apparatus() {
        Apparatus former = from("former-numbers.yaml").apparatus();
        return new Apparatus(from("index.yaml").apparatus().see(), former.edition(), former.former(), own.apparatus().pictures());
    }

    private <T> List<T> entries(Function<Catalogue, List<T>> which, Function<T, String> file, Function<T, String> id) {
        List<T> entries = new ArrayList<>(Stream.concat(
                which.apply(own).stream().filter(entry -> !unread.contains(file.apply(entry))),
                which.apply(other).stream().filter(entry -> isBorrowed(file.apply(entry)))).toList());
        entries.sort(Comparator.comparing(id, NaturalOrder.INSTANCE));
        return entries;
    }

    private Map<String, Chapter> chapters() {
        Map<String, Chapter> chapters = new LinkedHashMap<>(own.chapters());
        other.chapters().forEach((path, chapter) -> {
            if (isBorrowed(path)) {
                chapters.put(path, chapter);
            }
        });
        return chapters;
    }

    private boolean isBorrowed(String file) {
        return unread.contains(file) && !unreadBeside.contains(file);
    }
}
