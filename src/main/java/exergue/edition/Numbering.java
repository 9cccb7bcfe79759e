package exergue.edition;

import exergue.model.Coin;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The running catalogue numbers. A pinned number stays what it is; the other coins get the numbers from 1 that nobody
 * has pinned, in the order of the book.
 */
public final class Numbering {

    /** Printed in the place of a number for a type of which there is no coin. */
    static final String NO_COIN = "–";

    private final Map<String, Integer> numbers;

    private Numbering(Map<String, Integer> numbers) {
        this.numbers = numbers;
    }

    public static Numbering of(BookOrder order) {
        Set<Integer> pinned = new HashSet<>();
        order.types().forEach(type -> type.coins().forEach(
                coin -> coin.number().map(Written::value).ifPresent(pinned::add)));
        Map<String, Integer> numbers = new HashMap<>();
        int next = 1;
        for (BookOrder.TypeInBook type : order.types()) {
            for (Coin coin : type.coins()) {
                Optional<Integer> own = coin.number().map(Written::value);
                if (own.isEmpty()) {
                    while (pinned.contains(next)) {
                        next++;
                    }
                }
                numbers.put(coin.id().value(), own.isPresent() ? own.get() : next++);
            }
        }
        return new Numbering(numbers);
    }

    /** Empty for a coin that has no place in the book because its type is unknown. */
    public Optional<Integer> of(String coin) {
        return Optional.ofNullable(numbers.get(coin));
    }

    /** The numbers of these coins: "12", "12–18", "3–4, 17"; an en dash where there are no coins. */
    public String range(List<Coin> coins) {
        List<Integer> sorted = new ArrayList<>();
        coins.forEach(coin -> of(coin.id().value()).ifPresent(sorted::add));
        Collections.sort(sorted);
        return sorted.isEmpty() ? NO_COIN : runs(sorted);
    }

    private static String runs(List<Integer> sorted) {
        List<String> runs = new ArrayList<>();
        int first = sorted.get(0);
        int last = first;
        for (int number : sorted) {
            if (number > last + 1) {
                runs.add(run(first, last));
                first = number;
            }
            last = number;
        }
        runs.add(run(first, last));
        return String.join(", ", runs);
    }

    private static String run(int first, int last) {
        return first == last ? String.valueOf(first) : first + "–" + last;
    }
}
