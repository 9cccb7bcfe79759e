package exergue.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.finding.Finding;
import exergue.source.text.Conflict;
import exergue.source.text.Conflict.Version;
import exergue.source.text.Conflict.Which;
import exergue.source.text.SourceText;
import exergue.source.yaml.ConflictedEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a merge leaves in a file. The marks are those of git-merge(1), "How conflicts are presented": seven signs, a space
 * and a label, with the style diff3 also the text both sides started from (from memory).
 */
class ConflictTest {

    /** One stretch of a file: what all have, or what each has. */
    private record Stretch(List<String> common, List<String> upper, List<String> base, List<String> lower) { }

    @Provide
    Arbitrary<List<Stretch>> files() {
        Arbitrary<List<String>> lines = Arbitraries.of("id: a", "  weight: 3.9 g", "", "note: |-", "  ====== six", "# <<<< four", "=======x")
                .list().ofMaxSize(3);
        return Combinators.combine(lines, lines, lines, lines).as(Stretch::new).list().ofMinSize(1).ofMaxSize(4);
    }

    @Property(tries = 200)
    void everySideCanBeTakenOutAgainWithItsPlaces(@ForAll("files") List<Stretch> file, @ForAll boolean withBase) {
        List<String> merged = new ArrayList<>();
        List<String> upper = new ArrayList<>();
        List<String> lower = new ArrayList<>();
        for (Stretch stretch : file) {
            merged.addAll(stretch.common());
            merged.add("<<<<<<< HEAD");
            merged.addAll(stretch.upper());
            if (withBase) {
                merged.add("||||||| 1a2b3c4");
                merged.addAll(stretch.base());
            }
            merged.add("=======");
            merged.addAll(stretch.lower());
            merged.add(">>>>>>> editor");
            upper.addAll(stretch.common());
            upper.addAll(stretch.upper());
            lower.addAll(stretch.common());
            lower.addAll(stretch.lower());
        }
        SourceText text = new SourceText("coins/a.yaml", String.join("\n", merged));
        Conflict conflict = Conflict.in(text).orElseThrow();
        assertEquals(file.size(), conflict.regions().size());
        assertEquals(List.of(), conflict.strays());
        assertEquals(withBase, conflict.hasBase());
        assertSide(upper, conflict.version(Which.UPPER), text);
        assertSide(lower, conflict.version(Which.LOWER), text);
    }

    /** Only one has added something, both have added to a list, one has taken something out; as {@code git merge} leaves them with diff3. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "sest: {name: Sestra} | | | Only “HEAD” has added “sest.name”: “Sestra”. Keep it if it is right, beside what else is right of the two texts.",
        " | note: old | note: old | Only “HEAD” has taken out “note”; it was “old”. Keep the value that is right, once.",
        "- pierced | | - broken | “[1]”: “HEAD” has “pierced”, “editor” has “broken”; before both there was nothing. If both are right, keep both, "
                + "one below the other; else the one that is right.",
        "note: a | note: old | note: b | “note”: “HEAD” has “a”, “editor” has “b”; before both it was “old”. Keep the value that is right, once."})
    void whatEachSideHasDoneIsSaid(String upper, String base, String lower, String told) {
        String text = "<<<<<<< HEAD\n" + line(upper) + "||||||| 1a2b3c4\n" + line(base) + "=======\n" + line(lower) + ">>>>>>> editor\n";
        assertEquals(List.of(told + " Delete the lines with <<<<<<<, ======= and >>>>>>>."),
                ConflictedEntry.explain(Conflict.in(new SourceText("mints.yaml", text)).orElseThrow()).stream()
                        .map(finding -> finding.what() + " " + finding.remedy()).toList());
    }

    private static String line(String text) {
        return text == null ? "" : text + "\n";
    }

    private static void assertSide(List<String> lines, Version version, SourceText text) {
        assertEquals(String.join("", lines.stream().map(line -> line + "\n").toList()), version.text().text());
        assertEquals(lines, IntStream.rangeClosed(1, lines.size()).mapToObj(line -> text.line(version.line(line))).toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"id: a\nnote: 1 < 2\n", "Title\n=======\n\nText.\n", "> > > > > > > deep\n", "<<<<<<<< eight\n", "a <<<<<<< b\n"})
    void whatOnlyLooksLikeAConflictIsNone(String text) {
        assertTrue(Conflict.in(new SourceText("chapters/a.md", text)).isEmpty());
    }

    /** A page may quote deeply, or underline a heading with as many signs as a mark has. */
    @ParameterizedTest
    @ValueSource(strings = {"# History\n\n>>>>>>> Said he.\n", "# History\n\nThe mint\n=======\n\nIt opened late.\n"})
    void aChapterIsNotBlamedForItsSigns(String chapter) {
        assertEquals(List.of(), Trees.findings("chapters/history.md", chapter).all().stream()
                .filter(finding -> finding.code().id().equals("merge-conflict")).toList());
    }

    @Test
    void aConflictIsFoundWithTheLineEndsOfAnySystem() {
        List<Finding> findings = Trees.findings("coins/lk-1.yaml", """
                id: lk-1
                type: owl
                <<<<<<< HEAD
                note: Worn.
                =======
                note: Very worn.
                >>>>>>> editor
                """.replace("\n", "\r\n")).all();
        assertEquals(List.of("“note”: “HEAD” has “Worn.”, “editor” has “Very worn.”."), findings.stream().map(Finding::what).toList());
        assertEquals("coins/lk-1.yaml:4:7", findings.get(0).place().toString());
    }

    @Test
    void worksAndPagesAreToldByTheirLines() {
        String text = "<<<<<<< HEAD\n[1]\n=======\n>>>>>>> editor\n";
        assertEquals(List.of("“HEAD” has “[1]” here, “editor” has nothing."),
                Trees.findings("works.json", text).all().stream().filter(f -> f.code().id().equals("merge-conflict")).map(Finding::what).toList());
    }
}
