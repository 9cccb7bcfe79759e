package exergue.review.change;

import exergue.measure.Kind;
import java.util.List;
import java.util.Optional;

/** What is otherwise in the book because of the changes, though nobody has written it. */
public sealed interface Consequence {

    /**
     * Coins in a row whose numbers shift by the same.
     *
     * @param first number before, of the first of them; {@code last} that of the last
     * @param to    the first one's number now
     */
    record Renumbered(int first, int last, int to) implements Consequence { }

    /** @param of what is counted: "coins", "coins of type ark-t05" */
    record Counted(String of, int before, int after) implements Consequence { }

    /** The mean weight of a type. @param before as "3.81 g of 12 coins"; empty where no weight counts */
    record MeanWeight(Subject type, Optional<String> before, Optional<String> after) implements Consequence { }

    /**
     * A die that links others.
     *
     * @param side   "obverse" or "reverse"
     * @param before dies of the other side that coins had together with it
     */
    record DieLink(String side, String die, List<String> before, List<String> after) implements Consequence {
        public DieLink {
            before = List.copyOf(before);
            after = List.copyOf(after);
        }
    }

    /** A line of a concordance that leads to other coins. @param work its sign */
    record Concordance(String work, String number, List<Subject> before, List<Subject> after) implements Consequence {
        public Concordance {
            before = List.copyOf(before);
            after = List.copyOf(after);
        }
    }

    /** Figures printed otherwise, though their entries say the same. */
    record Printed(Kind kind, List<Print> coins) implements Consequence {
        public Printed {
            coins = List.copyOf(coins);
        }
    }

    /** @param lost true where fewer places are printed than before */
    record Print(Subject coin, String before, String after, boolean lost) { }
}
