package exergue.cli.collation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.Golden;
import exergue.files.Tree;
import exergue.review.Collation;
import exergue.review.SmallCatalogue;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every message of a comparison, as approved. */
class CollationGoldenTest {

    private static final Path APPROVED = Path.of("src/test/resources/golden/collation");
    /** Changes that do not stand in each other's way, all at once. */
    private static final List<String> TOGETHER = List.of("digits-exchanged", "reference-changed", "description", "die-link-gone",
            "coin-renamed", "coin-taken-out", "chapter", "house-decimals", "mints-in-another-order", "exact-find-spot");

    static Stream<String> cases() {
        return CollationCases.all().keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void eachChangeIsToldAsApproved(String name) {
        SmallCatalogue before = new SmallCatalogue();
        Golden.check(APPROVED.resolve(name + ".txt"),
                CollationFormat.TEXT.render(compared(before.tree(), CollationCases.all().get(name).apply(before).tree())));
    }

    @Test
    void photographsAreToldAsApproved() {
        SmallCatalogue catalogue = new SmallCatalogue();
        Golden.check(APPROVED.resolve("photographs.txt"), CollationFormat.TEXT.render(
                compared(CollationCases.photographs(catalogue, true), CollationCases.photographs(catalogue, false))));
    }

    @ParameterizedTest
    @MethodSource("formats")
    void manyChangesAtOnceInEveryForm(CollationFormat format) {
        SmallCatalogue before = new SmallCatalogue();
        SmallCatalogue after = before;
        for (String name : TOGETHER) {
            after = CollationCases.all().get(name).apply(after);
        }
        Golden.check(APPROVED.resolve("many." + switch (format) {
            case TEXT -> "txt";
            case MARKDOWN -> "md";
            case JSON -> "json";
        }),
                format.render(compared(before.tree(), after.tree())));
    }

    static Stream<CollationFormat> formats() {
        return Stream.of(CollationFormat.values());
    }

    @Test
    void theSameIsTheSame() {
        Compared compared = compared(new SmallCatalogue().tree(), new SmallCatalogue().tree());
        assertEquals("a → b\n\nNo change: every file is the same.\n", CollationFormat.TEXT.render(compared));
    }

    @Test
    void noFileIsApprovedForNothing() throws IOException {
        Set<String> wanted = Set.copyOf(Stream.concat(cases(), Stream.of("photographs", "many")).toList());
        try (Stream<Path> files = Files.list(APPROVED)) {
            assertEquals(List.of(), files.map(file -> file.getFileName().toString())
                    .filter(file -> !wanted.contains(file.substring(0, file.lastIndexOf('.')))).sorted().toList());
        }
    }

    private static Compared compared(Tree before, Tree after) {
        try {
            return new Compared("a", "b", Collation.of(Collation.State.read(before), Collation.State.read(after)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
