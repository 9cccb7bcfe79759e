package exergue.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.Golden;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Type;
import exergue.study.Plausibility;
import exergue.study.die.DieChecks;
import exergue.study.StudyCodes;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each code of check and study has a tree that is broken in just that way, and an approved message. */
class EveryCodeTest {

    private static final Path APPROVED = Path.of("src/test/resources/golden/check");

    static List<String> codes() {
        return Stream.concat(Checker.codes().stream(), StudyCodes.all().stream()).map(Code::id).toList();
    }

    @Test
    void noCodeIsRaisedByTwoRules() {
        assertEquals(codes().size(), Set.copyOf(codes()).size());
    }

    @ParameterizedTest
    @MethodSource("codes")
    void itsTreeHasThisFaultAndNoOther(String code) {
        Findings findings = findings(BrokenTrees.read(code));
        assertEquals(Set.of(code), findings.all().stream().map(f -> f.code().id()).collect(Collectors.toSet()));
        Golden.check(APPROVED.resolve(code).resolve("findings.txt"),
                findings.all().stream().map(BrokenTrees::words).collect(Collectors.joining("\n")));
    }

    @ParameterizedTest
    @MethodSource("codes")
    void everyFindingQuotesWhatItIsAboutAndSaysWhatToDo(String code) {
        for (Finding finding : findings(BrokenTrees.read(code)).all()) {
            assertTrue(finding.place().line() > 0 && finding.place().column() > 0, finding::toString);
            assertTrue(finding.what().endsWith(".") && finding.remedy().matches("(?s).*[.?]"), finding::toString);
        }
    }

    @Test
    void everyRuleIsDocumented() {
        for (Code code : Stream.concat(Checker.codes().stream(), StudyCodes.all().stream()).toList()) {
            assertFalse(code.title().isBlank() || code.title().endsWith(".") || code.why().isBlank(), code.id());
            assertNotEquals(code.faulty(), code.mended(), code.id());
        }
    }

    @Test
    void noApprovedMessageIsLeftOverFromARuleThatIsGone() throws IOException {
        try (Stream<Path> folders = Files.list(APPROVED)) {
            assertEquals(codes().stream().sorted().toList(), folders.map(f -> f.getFileName().toString()).sorted().toList());
        }
    }

    @Provide
    Arbitrary<String> anyCode() {
        return Arbitraries.of(codes());
    }

    @Property(tries = 150)
    void theOrderOfCoinsAndTypesChangesNoFinding(@ForAll("anyCode") String code, @ForAll Random random) {
        Catalogue catalogue = BrokenTrees.read(code);
        assertEquals(findings(catalogue).all(), findings(shuffled(catalogue, random)).all());
    }

    private static Findings findings(Catalogue catalogue) {
        return Checker.check(catalogue).and(Plausibility.check(catalogue)).and(DieChecks.check(catalogue));
    }

    private static Catalogue shuffled(Catalogue all, Random random) {
        List<Coin> coins = new ArrayList<>(all.coins());
        List<Type> types = new ArrayList<>(all.types());
        Collections.shuffle(coins, random);
        Collections.shuffle(types, random);
        return new Catalogue(all.title(), all.plan(), all.style(), all.conventions(), all.works(), all.mints(),
                all.rulers(), all.findSpots(), all.collections(), types, coins, all.chapters(), all.apparatus(), all.templates(),
                all.citationStyle(), all.groups());
    }
}
