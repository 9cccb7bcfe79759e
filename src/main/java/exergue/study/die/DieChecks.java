package exergue.study.die;

import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.finding.Place;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.HouseStyle;
import exergue.model.Type;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Looks over the dies of all coins: states that cannot all be right, and names that may stand for two dies. */
public final class DieChecks {

    private final HouseStyle.DieNames names;
    private final List<Struck> struck = new ArrayList<>();

    /** A coin, its type, and what the study makes of it. */
    private record Struck(Coin coin, Type type, StruckCoin dies) {

        Optional<Written<String>> name(DieSide side) {
            return coin.dies().flatMap(dies -> side == DieSide.OBVERSE ? dies.obverse() : dies.reverse());
        }

        Optional<Written<Integer>> state(DieSide side) {
            return coin.dies().flatMap(dies -> side == DieSide.OBVERSE ? dies.obverseState() : dies.reverseState()).map(Coin.DieState::number);
        }
    }

    private DieChecks(Catalogue catalogue) {
        this.names = catalogue.style().dieNames();
        Map<String, Type> types = new HashMap<>();
        catalogue.types().forEach(type -> types.putIfAbsent(type.id().value(), type));
        StruckCoins reading = new StruckCoins(names);
        for (Coin coin : catalogue.coins()) {
            Type type = types.get(coin.type().value());
            if (type != null && coin.dies().isPresent()) {
                struck.add(new Struck(coin, type, reading.of(coin, type)));
            }
        }
        struck.sort((one, other) -> StruckCoin.BY_ID.compare(one.dies(), other.dies()));
    }

    public static Findings check(Catalogue catalogue) {
        DieChecks checks = new DieChecks(catalogue);
        List<Finding> found = new ArrayList<>();
        checks.contradictions(found);
        checks.acrossIssues(found);
        return Findings.of(found);
    }

    /** The chains are looked for only where a state is recorded at all. */
    private void contradictions(List<Finding> found) {
        List<StruckCoin> coins = struck.stream().map(Struck::dies).toList();
        List<DieUsage> usage = DieUsage.of(coins);
        if (usage.isEmpty()) {
            return;
        }
        for (List<Combination> together : Linked.groups(DieStudy.combinations(coins))) {
            Set<Die> dies = new HashSet<>();
            together.forEach(pair -> dies.addAll(List.of(pair.pair().obverse(), pair.pair().reverse())));
            List<DieUsage> own = usage.stream().filter(use -> dies.contains(use.die())).toList();
            List<Die> contradicted = Precedence.of(own.stream().flatMap(use -> use.order().stream()).toList()).contradicted();
            if (!contradicted.isEmpty()) {
                found.add(contradiction(own, contradicted));
            }
        }
    }

    private Finding contradiction(List<DieUsage> usage, List<Die> contradicted) {
        List<DieUsage> guilty = usage.stream().filter(use -> use.order().stream()
                .anyMatch(before -> contradicted.contains(before.earlier()) && contradicted.contains(before.later()))).toList();
        DieSide side = guilty.get(0).die().side();
        Struck first = struck.stream().filter(one -> one.state(side).isPresent()
                && one.dies().of(side).filter(die -> die.die().equals(guilty.get(0).die())).isPresent()).findFirst().orElseThrow();
        String what = "The states of " + named(guilty.stream().map(DieUsage::die).toList()) + " contradict each other: by them "
                + named(contradicted) + " would each have been used before and after each other.";
        return Finding.of(DieCodes.STATES_CONTRADICT, first.state(side).orElseThrow().place(), path(side) + ".state", what,
                "Look at the coins of these dies again: a state may be numbered the wrong way round, or a die misnamed. If a die was really "
                        + "laid aside and taken up again, leave its states out and say so in a note.");
    }

    private void acrossIssues(List<Finding> found) {
        for (DieSide side : DieSide.values()) {
            Map<Die, Struck> first = new TreeMap<>();
            Set<Die> told = new HashSet<>();
            for (Struck one : struck) {
                one.dies().of(side).map(DieOfCoin::die).ifPresent(die -> {
                    Struck before = first.putIfAbsent(die, one);
                    if (before != null && !issue(before).equals(issue(one)) && told.add(die)) {
                        found.add(acrossIssues(side, before, one));
                    }
                });
            }
        }
    }

    private Finding acrossIssues(DieSide side, Struck before, Struck one) {
        Written<String> name = one.name(side).orElseThrow();
        Place place = name.place();
        String what = "The " + path(side).substring("dies.".length()) + " die “" + name + "” struck “" + one.coin().id() + "” (" + issue(one)
                + ") and “" + before.coin().id() + "” (" + issue(before) + ").";
        String remedy = names == HouseStyle.DieNames.BY_TYPE ? "If they are two dies, give one of them another name."
                : "If they are two dies, give one another name, or say in house-style.yaml where the numbers begin anew: die-names: by mint, or "
                        + "by type. If it is one die, nothing need be done.";
        return Finding.of(DieCodes.ACROSS_ISSUES, place, path(side), what, remedy)
                .withRelated(before.name(side).orElseThrow().place(), "the other coin");
    }

    /** "lampron, drachm" */
    private static String issue(Struck one) {
        return one.type().mint() + ", " + one.type().denomination();
    }

    private static String path(DieSide side) {
        return side == DieSide.OBVERSE ? "dies.obverse" : "dies.reverse";
    }

    private static String named(List<Die> ordered) {
        return String.join(", ", ordered.stream().map(die -> "“" + die.name() + "”").toList());
    }
}
