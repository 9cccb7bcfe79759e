package exergue.review.words;

import exergue.review.change.Consequence;
import exergue.review.change.Subject;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Consequences of changes in words, those of one kind together. */
public final class ConsequenceSentences {

    /** Coins that are named one by one where many are printed otherwise. */
    private static final int NAMED = 5;

    private ConsequenceSentences() { }

    /** One or more for each, in their order. */
    public static List<String> of(List<Consequence> consequences) {
        List<String> sentences = new ArrayList<>();
        List<Consequence.Renumbered> numbers = new ArrayList<>();
        for (Consequence consequence : consequences) {
            if (consequence instanceof Consequence.Renumbered run) {
                numbers.add(run);
            } else {
                sentences.add(of(consequence));
            }
        }
        if (!numbers.isEmpty()) {
            sentences.add(0, numbers(numbers));
        }
        return sentences;
    }

    private static String of(Consequence consequence) {
        if (consequence instanceof Consequence.Counted counted) {
            return counted.of() + ": " + counted.before() + " → " + counted.after();
        } else if (consequence instanceof Consequence.MeanWeight mean) {
            return "mean weight of " + Sentences.name(mean.type()) + ": " + mean.before().orElse("none") + " → "
                    + mean.after().orElse("none");
        } else if (consequence instanceof Consequence.DieLink link) {
            return link.side() + " die " + link.die() + " links " + dies(link.before()) + " → " + dies(link.after());
        } else if (consequence instanceof Consequence.Concordance line) {
            return "concordance with " + line.work() + ", " + line.number() + ": " + numbers("no.", "nos", line.before()) + " → "
                    + numbers("no.", "nos", line.after());
        }
        return printed((Consequence.Printed) consequence);
    }

    private static String dies(List<String> dies) {
        return dies.isEmpty() ? "nothing" : String.join(", ", dies);
    }

    /** "17 numbers change: 43–58 become 42–57, 42 becomes 58" */
    private static String numbers(List<Consequence.Renumbered> runs) {
        int changed = runs.stream().mapToInt(run -> run.last() - run.first() + 1).sum();
        return count(changed, "number") + (changed == 1 ? " changes: " : " change: ")
                + runs.stream().map(ConsequenceSentences::run).collect(Collectors.joining(", "));
    }

    private static String run(Consequence.Renumbered run) {
        return run.first() == run.last() ? run.first() + " becomes " + run.to()
                : run.first() + "–" + run.last() + " become " + run.to() + "–" + (run.to() + run.last() - run.first());
    }

    private static String numbers(String one, String many, List<Subject> coins) {
        List<String> numbers = coins.stream().map(coin -> coin.number().map(String::valueOf).orElse(coin.id())).toList();
        return numbers.isEmpty() ? "none" : (numbers.size() == 1 ? one : many) + " " + String.join(", ", runs(numbers));
    }

    /** Three or more numbers that follow one another are told by the first and the last. */
    private static List<String> runs(List<String> numbers) {
        List<String> runs = new ArrayList<>();
        for (int i = 0; i < numbers.size(); i++) {
            int last = i;
            while (last + 1 < numbers.size() && follows(numbers.get(last), numbers.get(last + 1))) {
                last++;
            }
            if (last - i >= 2) {
                runs.add(numbers.get(i) + "–" + numbers.get(last));
                i = last;
            } else {
                runs.add(numbers.get(i));
            }
        }
        return runs;
    }

    private static boolean follows(String number, String next) {
        return number.matches("[0-9]{1,9}") && next.equals(String.valueOf(Integer.parseInt(number) + 1));
    }

    private static String printed(Consequence.Printed printed) {
        String some = printed.coins().stream().limit(NAMED).map(ConsequenceSentences::print).collect(Collectors.joining("; "));
        long lost = printed.coins().stream().filter(Consequence.Print::lost).count();
        int more = printed.coins().size() - NAMED;
        return count(printed.coins().size(), printed.kind().word()) + " printed otherwise"
                + (lost == 0 ? "" : ", " + (lost == printed.coins().size() ? "all" : lost)
                        + " with fewer places: precision lost")
                + ": " + some + (more > 0 ? "; and " + more + " more" : "");
    }

    private static String print(Consequence.Print print) {
        return "no. " + print.coin().number().map(String::valueOf).orElse(print.coin().id()) + " "
                + (print.before().isEmpty() ? "nothing" : print.before()) + " → "
                + (print.after().isEmpty() ? "nothing" : print.after());
    }

    private static String count(int count, String of) {
        return count + " " + (count == 1 ? of : plural(of));
    }

    private static String plural(String of) {
        return switch (of) {
            case "axis" -> "axes";
            case "thickness" -> "thicknesses";
            case "density" -> "densities";
            default -> of + "s";
        };
    }
}
