package exergue.study.density;

import exergue.measure.Alloy;
import exergue.model.Written;
import exergue.study.Summary;
import exergue.study.group.Coins;
import exergue.study.group.Member;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Coins of one group whose types name the same two metals, with the fineness that their densities mean.
 *
 * @param group of which it is a part
 * @param coins with a density that an alloy of these metals can have
 * @param beyond coins whose density no such alloy has
 */
record AlloyGroup(Coins group, Alloy alloy, List<Fine> coins, int beyond) {

    AlloyGroup {
        coins = List.copyOf(coins);
    }

    /** @param coin its id; @param density in g/cm³ */
    record Fine(String coin, double density, Alloy.Fineness fineness) {

        double share() {
            return fineness.share().doubleValue();
        }

        /** Half of what the steps of its weighings leave open. */
        double error() {
            return fineness.most().subtract(fineness.least()).doubleValue() / 2;
        }
    }

    /** One for each two metals that types of the group name, by the names of the metals. */
    static List<AlloyGroup> of(Coins group) {
        Map<String, List<Member>> byAlloy = new TreeMap<>();
        for (Member member : group.members()) {
            if (member.density().isPresent() && member.type().alloy().isPresent()) {
                byAlloy.computeIfAbsent(member.type().alloy().get().value().id(), any -> new ArrayList<>()).add(member);
            }
        }
        return byAlloy.values().stream().map(members -> of(group, members)).toList();
    }

    private static AlloyGroup of(Coins group, List<Member> members) {
        Alloy alloy = members.get(0).type().alloy().map(Written::value).orElseThrow();
        List<Fine> fine = new ArrayList<>();
        for (Member member : members) {
            alloy.fineness(member.density().orElseThrow()).ifPresent(fineness -> fine.add(new Fine(member.id(),
                    member.density().orElseThrow().value().doubleValue(), fineness)));
        }
        return new AlloyGroup(group, alloy, fine, members.size() - fine.size());
    }

    /** Of the shares of the heavier metal, 0 to 1. */
    Optional<Summary> shares() {
        return Summary.of(coins.stream().map(Fine::share).sorted().toList());
    }

    /** On average. */
    double error() {
        return coins.stream().mapToDouble(Fine::error).sorted().average().orElse(0);
    }
}
