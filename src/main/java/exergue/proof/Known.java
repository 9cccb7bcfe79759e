package exergue.proof;

import exergue.edition.Book;
import exergue.edition.EntryBlock;
import exergue.edition.Part;
import exergue.edition.Anchors;
import exergue.edition.Specimen;
import exergue.finding.Place;
import exergue.model.Catalogue;
import exergue.model.Inline;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * An entry, a coin or a chapter of the book, and the file it is written in.
 *
 * @param anchor in the book
 * @param entry  anchor of the entry that a coin stands in; otherwise its own
 * @param number as printed: "12", "12–18"; empty for a chapter
 * @param id     as written in the source; of a chapter its path
 * @param words  what it is: "Drachm, AR"; of a coin nothing
 * @param place  where it is written
 */
record Known(String anchor, String entry, String number, String id, String words, Place place) {

    /** In the order of the book. */
    static List<Known> all(Book book, Catalogue catalogue) {
        Map<String, Known> written = written(catalogue);
        List<Known> all = new ArrayList<>();
        Stream.of(book.front(), book.body(), book.back()).flatMap(List::stream).forEach(part -> {
            if (part instanceof Part.Entries entries) {
                entries.blocks().forEach(block -> addEntry(block, written, all));
            } else if (part instanceof Part.Text && written.containsKey(part.id())) {
                Known chapter = written.get(part.id());
                all.add(new Known(part.id(), part.id(), "", chapter.id(), Inline.plain(part.heading()), chapter.place()));
            }
        });
        return List.copyOf(all);
    }

    private static void addEntry(EntryBlock block, Map<String, Known> written, List<Known> all) {
        if (!(block instanceof EntryBlock.Entry entry) || !written.containsKey(entry.id())) {
            return;
        }
        Known type = written.get(entry.id());
        all.add(new Known(entry.id(), entry.id(), entry.numbers(), type.id(), String.join(", ", entry.firstLine()), type.place()));
        for (Specimen coin : entry.specimens()) {
            Known its = written.get(coin.id());
            all.add(new Known(coin.id(), entry.id(), coin.number(), its.id(), "", its.place()));
        }
    }

    private static Map<String, Known> written(Catalogue catalogue) {
        Map<String, Known> written = new HashMap<>();
        catalogue.types().forEach(type -> add(written, Anchors.type(type.id().value()), type.id().value(), type.place()));
        catalogue.coins().forEach(coin -> add(written, Anchors.coin(coin.id().value()), coin.id().value(), coin.place()));
        catalogue.chapters().keySet().forEach(path -> add(written, Anchors.part(path), path, Place.ofFile(path)));
        return written;
    }

    private static void add(Map<String, Known> written, String anchor, String id, Place place) {
        written.putIfAbsent(anchor, new Known(anchor, anchor, "", id, "", place));
    }
}
