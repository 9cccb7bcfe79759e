package exergue.study.die;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** What must hold of every die study. */
class DieStudyPropertiesTest {

    @Provide
    static Arbitrary<List<StruckCoin>> coins() {
        Arbitrary<Integer> die = Arbitraries.integers().between(0, 12);
        Arbitrary<Integer> state = Arbitraries.integers().between(0, 3);
        return Combinators.combine(die, state, die, state).as(List::of).list().ofMaxSize(40).map(rows -> {
            List<StruckCoin> coins = new ArrayList<>();
            rows.forEach(row -> coins.add(new StruckCoin("c-" + coins.size(), die(DieSide.OBVERSE, "O", row.get(0), row.get(1)),
                    die(DieSide.REVERSE, "R", row.get(2), row.get(3)))));
            return coins;
        });
    }

    /** 0 is a die that could not be told, or a state that is not said. */
    private static Optional<DieOfCoin> die(DieSide side, String letter, int number, int state) {
        return number == 0 ? Optional.empty() : Optional.of(new DieOfCoin(new Die(side, "", letter + number),
                state == 0 ? OptionalInt.empty() : OptionalInt.of(state), Optional.empty()));
    }

    @Property(tries = 200)
    void theOrderOfCoinsDoesNotMatter(@ForAll("coins") List<StruckCoin> coins, @ForAll Random random) {
        List<StruckCoin> shuffled = new ArrayList<>(coins);
        Collections.shuffle(shuffled, random);
        assertEquals(DieStudy.of(coins), DieStudy.of(shuffled));
    }

    /** Prefixed names sort as before, so that all is as it was but for the names. */
    @Property(tries = 200)
    void otherNamesChangeNothingButNames(@ForAll("coins") List<StruckCoin> coins) {
        DieStudy study = DieStudy.of(coins);
        DieStudy renamed = DieStudy.of(coins.stream().map(coin -> new StruckCoin(coin.id(), coin.obverse().map(d -> renamed(d)),
                coin.reverse().map(d -> renamed(d)))).toList());
        assertEquals(study.obverse(), renamed.obverse());
        assertEquals(study.reverse(), renamed.reverse());
        assertEquals(study.chains().stream().map(DieStudyPropertiesTest::coinsOf).toList(),
                renamed.chains().stream().map(DieStudyPropertiesTest::coinsOf).toList());
        assertEquals(study.chains().stream().map(DieChain::crossings).toList(), renamed.chains().stream().map(DieChain::crossings).toList());
    }

    private static DieOfCoin renamed(DieOfCoin die) {
        return new DieOfCoin(new Die(die.die().side(), "elsewhere", "die " + die.die().name()), die.state(), die.flaw());
    }

    private static List<List<String>> coinsOf(DieChain chain) {
        return chain.combinations().stream().map(Combination::coins).toList();
    }

    @Property(tries = 200)
    void anotherCoinOfAKnownPairAddsNoDie(@ForAll("coins") List<StruckCoin> coins) {
        DieStudy study = DieStudy.of(coins);
        coins.stream().filter(coin -> coin.pair().isPresent()).findFirst().ifPresent(known -> {
            List<StruckCoin> more = new ArrayList<>(coins);
            more.add(new StruckCoin("new", known.obverse(), known.reverse()));
            DieStudy with = DieStudy.of(more);
            assertEquals(study.obverse().dies(), with.obverse().dies());
            assertEquals(study.reverse().dies(), with.reverse().dies());
            assertEquals(study.combinations().size(), with.combinations().size());
            assertEquals(study.chains().size(), with.chains().size());
        });
    }

    /** Every combination stands in one chain or alone, and no line crosses more often than with the dies as they are named. */
    @Property(tries = 200)
    void nothingIsLostAndNothingMadeWorse(@ForAll("coins") List<StruckCoin> coins) {
        DieStudy study = DieStudy.of(coins);
        List<Combination> found = new ArrayList<>(study.alone());
        for (DieChain chain : study.chains()) {
            found.addAll(chain.combinations());
            boolean free = study.usage().stream().allMatch(usage -> usage.order().isEmpty());
            TwoRows named = new TwoRows(chain.obverses().stream().sorted().toList(), chain.reverses().stream().sorted().toList());
            assertTrue(!free || chain.crossings() <= named.crossings(chain.combinations()));
        }
        found.sort(Comparator.comparing(Combination::pair));
        assertEquals(study.combinations(), found);
    }

    /** The order that states tell is kept wherever they do not contradict each other. */
    @Property(tries = 200)
    void theEarlierStandsFirst(@ForAll("coins") List<StruckCoin> coins) {
        DieStudy study = DieStudy.of(coins);
        for (DieChain chain : study.chains()) {
            if (chain.contradicted().isEmpty()) {
                study.usage().stream().filter(usage -> chain.obverses().contains(usage.die()) || chain.reverses().contains(usage.die()))
                        .flatMap(usage -> usage.order().stream()).forEach(before -> {
                            List<Die> row = before.earlier().side() == DieSide.OBVERSE ? chain.obverses() : chain.reverses();
                            assertTrue(row.indexOf(before.earlier()) < row.indexOf(before.later()), before + " in " + row);
                        });
            }
        }
    }

    /** Crossings counted two by two, as one would with a finger. */
    @Property(tries = 200)
    void crossingsAreCountedRight(@ForAll("coins") List<StruckCoin> coins) {
        for (DieChain chain : DieStudy.of(coins).chains()) {
            int crossings = 0;
            for (Combination one : chain.combinations()) {
                for (Combination other : chain.combinations()) {
                    int above = chain.obverses().indexOf(one.pair().obverse()) - chain.obverses().indexOf(other.pair().obverse());
                    int below = chain.reverses().indexOf(one.pair().reverse()) - chain.reverses().indexOf(other.pair().reverse());
                    crossings += above < 0 && below > 0 ? 1 : 0;
                }
            }
            assertEquals(crossings, chain.crossings());
        }
    }

    /** No estimate is below what was seen, none is infinite, and a coverage is a share. */
    @Property(tries = 200)
    void estimatesAreFiguresOrNothing(@ForAll("coins") List<StruckCoin> coins) {
        DieCounts counts = DieStudy.of(coins).obverse();
        for (Estimate estimate : Estimator.all(counts)) {
            estimate.dies().ifPresent(dies -> assertTrue(Double.isFinite(dies)
                    && (estimate.by() == Estimator.CARTER_1983 || dies >= counts.dies() - 1e-6), estimate + " of " + counts));
        }
        Coverage.of(counts).ifPresent(coverage -> assertTrue(coverage.share() >= 0 && coverage.share() <= 1));
    }

    /** A chain without rings whose branches are one die long can be drawn without a crossing, whatever its dies are called. */
    @Property(tries = 200)
    void anOpenChainIsDrawnOpen(@ForAll @Size(min = 1, max = 12) List<@IntRange(max = 3) Integer> branches, @ForAll Random random) {
        List<Integer> names = new ArrayList<>();
        for (int name = 1; name < 100; name++) {
            names.add(name);
        }
        Collections.shuffle(names, random);
        List<StruckCoin> coins = new ArrayList<>();
        int spine = names.remove(0);
        for (int step = 0; step < branches.size(); step++) {
            boolean obverse = step % 2 == 0;
            for (int branch = 0; branch < branches.get(step); branch++) {
                coins.add(coin(coins.size(), obverse, spine, names.remove(0)));
            }
            int next = names.remove(0);
            coins.add(coin(coins.size(), obverse, spine, next));
            spine = next;
        }
        DieStudy.of(coins).chains().forEach(chain -> assertEquals(0, chain.crossings()));
    }

    private static StruckCoin coin(int number, boolean obverse, int one, int other) {
        return new StruckCoin("c-" + number, die(DieSide.OBVERSE, "O", obverse ? one : other, 0),
                die(DieSide.REVERSE, "R", obverse ? other : one, 0));
    }
}
