package exergue.edition;

import java.util.Map;
import java.util.Optional;

/** On which page what stands, once the book is set. @param folios anchor to printed folio ("xii", "47"); @param pages how many pages in all */
public record PageMap(Map<String, String> folios, int pages) {

    public static final PageMap UNKNOWN = new PageMap(Map.of(), 0);

    public PageMap {
        folios = Map.copyOf(folios);
    }

    public Optional<String> folio(String anchor) {
        return Optional.ofNullable(folios.get(anchor));
    }
}
