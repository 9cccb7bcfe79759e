package exergue.study.group;

import exergue.model.CoinGroup;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * A group that has been gathered.
 *
 * @param id       of the declared group; of a division of one, and on the command line, its values
 * @param name     as tables and charts print it
 * @param declared the catalogue's own words on it: steps, weight standard, wear; empty where it was asked for without a declaration
 * @param members  in the order of the catalogue
 */
public record Coins(String id, String name, Optional<CoinGroup> declared, List<Member> members) {

    public Coins {
        members = List.copyOf(members);
    }

    /** Weights that count, in grams, the least first. */
    public double[] weights() {
        return members.stream().filter(Member::counts).map(Member::weight).flatMapToDouble(OptionalDouble::stream).sorted().toArray();
    }

    /** Coins with a weight that does not count: damaged, or by the author's word. */
    public int leftOut() {
        return (int) members.stream().filter(member -> member.weight().isPresent() && !member.counts()).count();
    }

    /** In millimetres, the least first. */
    public double[] diameters() {
        return figures(Member::diameter);
    }

    /** In clock hours, 12 as 0, the least first. */
    public double[] axes() {
        return figures(Member::axis);
    }

    private double[] figures(Function<Member, OptionalDouble> figure) {
        double[] figures = members.stream().map(figure).flatMapToDouble(OptionalDouble::stream).toArray();
        Arrays.sort(figures);
        return figures;
    }
}
