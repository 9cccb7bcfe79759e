package exergue.typeset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What can be found on a page, in the order of the book. Ids of the source may be used twice (a ruler who struck at
 * two mints, a coin named like its type); in the pages each anchor has an address of its own.
 */
final class Anchors {

    enum Kind { PART, HEADING, ENTRY, COIN }

    /**
     * @param address in the pages: "a17"
     * @param id      in the book
     * @param number  catalogue number of a coin, empty for anything else
     * @param head    words for the running head from here on
     */
    record Anchor(String address, Kind kind, String id, String number, String head) { }

    private final List<Anchor> all = new ArrayList<>();
    private final Map<String, String> numbers = new LinkedHashMap<>();

    String add(Kind kind, String id, String number, String head) {
        String address = "a" + (all.size() + 1);
        all.add(new Anchor(address, kind, id, number, head));
        if (!number.isEmpty()) {
            numbers.putIfAbsent(id, number);
        }
        return address;
    }

    /** For an entry, whose number is a range that must not show as the number of a coin. */
    void number(String id, String number) {
        numbers.putIfAbsent(id, number);
    }

    Optional<String> numberOf(String id) {
        return Optional.ofNullable(numbers.get(id));
    }

    List<Anchor> all() {
        return all;
    }
}
