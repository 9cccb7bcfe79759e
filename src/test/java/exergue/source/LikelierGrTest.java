package exergue.source;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.files.MemoryTree;
import exergue.finding.Finding;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The error about {@code gr} offers both readings and says which is the likelier from the coin's type. */
class LikelierGrTest {

    private static final String LIMITS = "limits:\n  weight: {from: 3.4 g, to: 4.1 g}\n";
    private static final String BOTH = "“gr” can mean grains or grammes, and the convention “measurements at the bench” "
            + "does not say which: 59.7 g if grammes, 3.87 g if grains. ";

    static Stream<Arguments> verdicts() {
        return Stream.of(
                Arguments.of("limits of the type", LIMITS, List.of(), "Grains are likelier: the type “owl” expects “3.4 g” to “4.1 g”."),
                Arguments.of("limits go before other coins", LIMITS, List.of("owl 60 g"),
                        "Grains are likelier: the type “owl” expects “3.4 g” to “4.1 g”."),
                Arguments.of("one other coin", "", List.of("owl 61 g"),
                        "Grammes are likelier: the other coin of its type weighs 61.00 g."),
                Arguments.of("median of an even number", "", List.of("owl 3.7 g", "owl 4.00 g", "owl 99 g", "owl 3.5 g"),
                        "Grains are likelier: the 4 other coins of its type weigh 3.85 g (median)."),
                Arguments.of("coins of its denomination", "", List.of("other 3.91 g"),
                        "Grains are likelier: the other coin of its mint, denomination and metal weighs 3.91 g."),
                Arguments.of("far from both", "", List.of("owl 0.5 g"),
                        "Neither is likely: the other coin of its type weighs 0.50 g."),
                Arguments.of("nothing known", "", List.of(),
                        "Nothing here says which is the likelier: neither limits nor other weights are known of its type."));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("verdicts")
    void theMessageSaysWhich(String name, String limits, List<String> others, String verdict) {
        Map<String, String> files = Trees.sound();
        String type = "mint: lampron\ndenomination: Drachm\nmetal: silver\n";
        files.put("types/owl.yaml", "id: owl\n" + type + limits);
        files.put("types/other.yaml", "id: other\n" + type);
        files.put("coins/lk-1.yaml", "id: lk-1\ntype: owl\nmeasured:\n  by: bench\n  weight: 59.7 gr\n");
        for (int i = 0; i < others.size(); i++) {
            String[] words = others.get(i).split(" ", 2);
            files.put("coins/z-" + i + ".yaml", "id: z-" + i + "\ntype: " + words[0]
                    + "\nmeasured:\n  by: bench\n  weight: " + words[1] + "\n");
        }
        assertEquals(List.of(BOTH + verdict), messages(files));
    }

    @Test
    void anotherHandsFigureIsJudgedAsWell() {
        Map<String, String> files = Trees.sound();
        files.put("coins/lk-1.yaml", "id: lk-1\ntype: owl\nalso-measured:\n  - {by: bench, axis: 6 h}\n  - {by: bench, weight: 59.7 gr}\n");
        files.put("coins/lk-2.yaml", "id: lk-2\ntype: owl\nmeasured: {by: bench, weight: 3.9 g}\n");
        assertEquals(List.of(BOTH + "Grains are likelier: the other coin of its type weighs 3.90 g."), messages(files));
    }

    @Test
    void theCoinsOwnWeightGoesBeforeItsType() {
        Map<String, String> files = Trees.sound();
        files.put("coins/lk-1.yaml", "id: lk-1\ntype: owl\nmeasured: {by: bench, weight: 59.2 g}\n"
                + "also-measured:\n  - {by: bench, weight: 59.7 gr}\n");
        files.put("coins/lk-2.yaml", "id: lk-2\ntype: owl\nmeasured: {by: bench, weight: 3.9 g}\n");
        assertEquals(List.of(BOTH + "Grammes are likelier: the coin weighs “59.2 g” under “bench”."), messages(files));
    }

    private static List<String> messages(Map<String, String> files) {
        return Trees.read(MemoryTree.ofText(files)).findings().all().stream()
                .filter(finding -> finding.code().id().equals("gr-not-said")).map(Finding::what).toList();
    }
}
