package exergue.source.tidy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.files.FolderTree;
import exergue.files.MemoryTree;
import exergue.source.keys.FileKind;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** One layout; no value changes, no comment is lost, and what is tidy stays as it is. */
class TidyTest {

    @Test
    void keysComeInTheOrderOfTheReferenceAndCommentsGoWithThem() {
        assertEquals("""
                # Seen in 2024.

                id: lk-1
                # the drachm
                type: owl-1.0
                measured:  # from conventions.yaml
                  by: bench
                  weight: 3.87 g
                  axis: 'missing: the obverse is worn flat'
                damage: [chipped, corroded]
                obverse:
                  description: Head right, in a border
                collection: {id: museum, number: '1931.14'}
                references:
                  # the old list
                  - {work: hallam, number: 12, relation: this coin}
                note: |-
                  First line.

                  Second, with “marks”.
                # the end
                """, tidied("""
                # Seen in 2024.

                # the drachm
                type:   "owl-1.0"
                id: lk-1
                note: |-
                    First line.

                    Second, with “marks”.
                obverse: {description: 'Head right, in a border'}
                damage:
                - chipped
                - corroded
                measured: {axis: "missing: the obverse is worn flat", weight: 3.87 g, by: bench}  # from conventions.yaml
                collection: {number: "1931.14", id: museum}
                references:
                    # the old list
                    - work: hallam
                      relation: this coin
                      number: 12
                # the end
                """));
    }

    @Test
    void aLongTextIsBrokenAtItsSpacesAndStaysOneLine() {
        String text = "word ".repeat(40).strip();
        String tidied = tidied("id: lk-1\ntype: owl\nnote: " + text + "\n");
        assertTrue(tidied.contains("note: >-\n  word word"), tidied);
        assertTrue(tidied.lines().allMatch(line -> line.length() <= 120), tidied);
        assertEquals(Tidy.value("id: lk-1\ntype: owl\nnote: " + text + "\n"), Tidy.value(tidied));
    }

    @ParameterizedTest
    @ValueSource(strings = {"12", "'12'", "yes", "'yes'", "~", "'~'", "'“so”'", "''", "\"\"", "'#12'", "\"it's\"", "'it''s \"so\"'", "-0309~", "a:b", "'a: b'",
        "\"a\\tb\"", "\"a\\nb\"", "'- x'", "'a #b'", "'[Τ]ΗΛ'", "ΗΛ[..]", "\"\\u00a0x\"", "'  x '", "2024-05-01", "'2024-05-01'", "0x1F", "'null'",
        "|\n  a\n\n   b\n", "|+\n  a\n\n", ">\n  a\n  b\n", "!x", "'a\\b'"})
    void everyTextKeepsItsValue(String text) {
        String entry = "id: lk-1\ntype: owl\ncountermark: " + text + "\n";
        if (!Tidy.value(entry).isEmpty()) {
            assertEquals(Tidy.value(entry), Tidy.value(tidied(entry)), tidied(entry));
        }
    }

    @Test
    void aFileWithErrorsAndOneThatWouldLoseSomethingAreLeftAndNamed() throws IOException {
        Tidy.Tidied tidied = Tidy.of(MemoryTree.ofText(Map.of("coins/lk-1.yaml", "id: [lk-1\n", "coins/lk-2.yaml", "id: a\nid: b\n",
                "coins/lk-3.yaml", "id: lk-3\ntype: owl\n", "coins/lk-4.yaml", "type: owl\nid: lk-4\n", "chapters/a.md", "id:   x\n",
                "coins/lk-5.yaml", "id: lk-5\n<<<<<<< one\ntype: a\n=======\ntype: b\n>>>>>>> two\n")));
        assertEquals(List.of("coins/lk-1.yaml", "coins/lk-2.yaml", "coins/lk-5.yaml"), tidied.leftAlone().stream().map(Tidy.LeftAlone::file).toList());
        assertEquals(List.of("coins/lk-4.yaml"), List.copyOf(tidied.rewritten().keySet()));
        assertEquals("id: lk-4\ntype: owl\n", new String(tidied.rewritten().get("coins/lk-4.yaml"), StandardCharsets.UTF_8));
    }

    @Test
    void everyFileOfTheDemoCanBeTidied() throws IOException {
        assertEquals(List.of(), Tidy.of(new FolderTree(Path.of("catalogue-src"))).leftAlone());
    }

    @Provide
    Arbitrary<String> entries() {
        Arbitrary<String> words = Arbitraries.of("owl", "Head right", "it's", "a: b", "#12", "# no", "[Τ]ΗΛ", "ΗΛ[..]", "{x}", "12", "yes", "~", "“so”", "e\u0301",
                "𐆖", "-0309~", "- x", "a\\b", "\"q\"", "word ".repeat(30).strip(), " lead", "trail ", "two  spaces", "x,y", "%", "@", "`", "|", ">", "!", "&a", "*b", "?", ":");
        Arbitrary<String> scalars = words.flatMap(text -> Arbitraries.of(text, "'" + text.replace("'", "''") + "'",
                "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"", "|-\n  " + text + "\n\n  " + text, "|\n  " + text, ">-\n  " + text + "\n  more"));
        Arbitrary<String> blocks = words.map(text -> "'" + text.replace("'", "''") + "'").flatMap(text -> Arbitraries.of("[" + text + ", b]",
                "{words: " + text + "}", "\n  - " + text + "  # why", "\n  # before\n  - {words: " + text + ", date: 1868}", "\n  words: " + text + "\n  # within\n  date: 1868",
                "\n- a\n-   " + text, "  # said of\n  - b", "[a,  # lost?\n   " + text + "]", "\n  -\n    - deep: " + text));
        Arbitrary<String> keys = Arbitraries.of("note", "countermark", "id", "type", "provenance", "references", "measured", "dies", "photograph", "unknown");
        Arbitrary<String> line = Combinators.combine(keys, Arbitraries.oneOf(scalars, blocks), Arbitraries.of("", "  # a remark", "\n# a line", "\n\n# apart\n", "\n\n"))
                .as((key, value, more) -> key + ": " + value + (value.contains("\n") ? more.replaceAll("^ .*", "") : more));
        return line.list().ofMinSize(1).ofMaxSize(5).map(lines -> String.join("\n", lines) + "\n");
    }

    @Property(tries = 1000)
    void whatIsWrittenSaysTheSameWithTheSameCommentsAndIsTidy(@ForAll("entries") String entry) {
        Optional<String> tidied = Tidy.value(entry).isEmpty() ? Optional.empty() : Tidy.rewritten(entry, FileKind.COIN);
        tidied.ifPresent(text -> {
            assertEquals(Tidy.value(entry), Tidy.value(text));
            assertEquals(Tidy.comments(entry), Tidy.comments(text));
            assertEquals(Optional.of(text), Tidy.rewritten(text, FileKind.COIN));
        });
    }

    @Property(tries = 1000)
    void nothingButACommentInsideBracketsKeepsAnEntryFromBeingTidied(@ForAll("entries") String entry) {
        if (!Tidy.value(entry).isEmpty() && !entry.contains("lost?")) {
            assertTrue(Tidy.rewritten(entry, FileKind.COIN).isPresent(), entry);
        }
    }

    private static String tidied(String entry) {
        return Tidy.rewritten(entry, FileKind.COIN).orElseThrow(() -> new AssertionError("left alone: " + entry));
    }
}
