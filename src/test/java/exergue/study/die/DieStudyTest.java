package exergue.study.die;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Chains, lone pairs and the order that states give, on small invented issues. */
class DieStudyTest {

    /** "O1 R2": a die that could not be told is "?"; "O1/2 R1" is the second state of O1. */
    static List<StruckCoin> coins(String... pairs) {
        List<StruckCoin> coins = new ArrayList<>();
        for (String pair : pairs) {
            String[] dies = pair.split(" ");
            coins.add(new StruckCoin("c-" + (coins.size() + 1), die(DieSide.OBVERSE, dies[0]), die(DieSide.REVERSE, dies[1])));
        }
        return coins;
    }

    private static Optional<DieOfCoin> die(DieSide side, String text) {
        String[] parts = text.split("/");
        return text.equals("?") ? Optional.empty() : Optional.of(new DieOfCoin(new Die(side, "", parts[0]),
                parts.length > 1 ? OptionalInt.of(Integer.parseInt(parts[1])) : OptionalInt.empty(), Optional.empty()));
    }

    private static String names(List<Die> dies) {
        return dies.stream().map(Die::name).collect(Collectors.joining(" "));
    }

    @Test
    void combinationsThatShareADieAreAChain() {
        DieStudy study = DieStudy.of(coins("O1 R1", "O1 R2", "O2 R2", "O3 R3", "O3 R3", "O4 R5", "O5 R5", "? R1", "O9 ?", "? ?"));
        assertEquals(10, study.coins());
        assertEquals(List.of("O1 O2 | R1 R2", "O4 O5 | R5"), study.chains().stream()
                .map(chain -> names(chain.obverses()) + " | " + names(chain.reverses())).toList());
        assertEquals(List.of(List.of("c-4", "c-5")), study.alone().stream().map(Combination::coins).toList());
        assertEquals(List.of("c-8", "c-9"), study.halfKnown().stream().map(StruckCoin::id).toList());
    }

    @Test
    void diesAreCountedOnEverySideThatIsKnown() {
        DieStudy study = DieStudy.of(coins("O1 R1", "O1 R2", "O2 R2", "O3 ?", "? R2"));
        assertEquals("{1=2, 2=1}", study.obverse().diesByCoins().toString());
        assertEquals("{1=1, 3=1}", study.reverse().diesByCoins().toString());
        assertEquals(2 / 3.0, study.reversesToObverse().orElseThrow(), 1e-12);
    }

    /** An unbroken chain has no crossing, however its dies are named. */
    @Test
    void aSimpleChainLiesOpen() {
        DieChain chain = DieStudy.of(coins("O3 R1", "O1 R1", "O1 R4", "O2 R4", "O2 R2", "O4 R2", "O4 R3")).chains().get(0);
        assertEquals(0, chain.crossings());
        assertTrue(List.of("O3 O1 O2 O4", "O4 O2 O1 O3").contains(names(chain.obverses())), names(chain.obverses()));
    }

    /** Two obverses that were both used with the same two reverses cannot but cross once. */
    @Test
    void aRingCrossesOnce() {
        assertEquals(1, DieStudy.of(coins("O1 R1", "O1 R2", "O2 R1", "O2 R2")).chains().get(0).crossings());
    }

    @Test
    void statesPutTheEarlierPartnerFirst() {
        DieStudy study = DieStudy.of(coins("O1/2 R1", "O1/1 R2", "O1/1 R2", "O1/2 R3"));
        assertEquals("R2 R1 R3", names(study.chains().get(0).reverses()));
        assertEquals(List.of("1: R2", "2: R1 R3"), study.usage().get(0).states().stream()
                .map(state -> state.number() + ": " + names(state.partners())).toList());
        assertEquals(List.of(), study.chains().get(0).contradicted());
    }

    /** A partner met in both states is neither before nor after. */
    @Test
    void aPartnerOfTwoStatesGivesNoOrder() {
        DieStudy study = DieStudy.of(coins("O1/2 R1", "O1/1 R1", "O1/1 R2"));
        assertEquals(List.of(), study.usage().get(0).order());
    }

    @Test
    void statesThatContradictAreSaid() {
        DieStudy study = DieStudy.of(coins("O1/1 R1", "O1/2 R2", "O2/1 R2", "O2/2 R1"));
        assertEquals("R1 R2", names(study.chains().get(0).contradicted()));
    }

    @Test
    void statesOfReversesOrderObverses() {
        DieStudy study = DieStudy.of(coins("O1 R1/3", "O2 R1/2", "O3 R1/1"));
        assertEquals("O3 O2 O1", names(study.chains().get(0).obverses()));
    }

    /** The same name begins anew with each mint or type, if the house says so. */
    @Test
    void diesOfOneNameMayBeTwo() {
        Stream<StruckCoin> coins = Stream.of(of("a", "one"), of("b", "other"));
        assertEquals(2, DieStudy.of(coins.toList()).alone().size());
    }

    private static StruckCoin of(String id, String within) {
        return new StruckCoin(id, Optional.of(new DieOfCoin(new Die(DieSide.OBVERSE, within, "O1"), OptionalInt.empty(), Optional.empty())),
                Optional.of(new DieOfCoin(new Die(DieSide.REVERSE, within, "R1"), OptionalInt.empty(), Optional.empty())));
    }
}
