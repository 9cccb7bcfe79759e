package exergue.source.shape;

import java.util.ArrayList;
import java.util.List;

/** Where in the structure of a file a key belongs that was written in the wrong block. */
final class Homes {

    private Homes() { }

    /** The blocks below {@code root} that have the key, in words: {@code “measured”}. */
    static List<String> of(String key, Wanted<?> root) {
        List<String> homes = new ArrayList<>();
        search(key, root, "", homes);
        return homes;
    }

    private static void search(String key, Wanted<?> wanted, String path, List<String> homes) {
        if (wanted instanceof ListOf<?> list) {
            search(key, list.member(), path, homes);
        } else if (wanted instanceof MapOf<?> map) {
            search(key, map.member(), path.isEmpty() ? "an id" : path + ", an id", homes);
        } else if (wanted instanceof TextOr<?> either) {
            search(key, either.block(), path, homes);
        } else if (wanted instanceof Block<?> block) {
            if (block.names().contains(key)) {
                homes.add(path.isEmpty() ? "no other key, at the left margin" : path);
            }
            for (Key<?> inner : block.keys()) {
                search(key, inner.wanted(), path.isEmpty() ? "“" + inner.name() + "”"
                        : path + ", “" + inner.name() + "”", homes);
            }
        }
    }
}
