package exergue.exchange.list;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.files.Tree;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.source.SourceReader;
import exergue.source.text.Notebook;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** What holds for every list. They are written by commons-csv, which is another hand than the reader of places and rows. */
class ListPropertiesTest {

    private static final List<String> HEADINGS = List.of("A", "B", "C", "D", "E", "F");
    private static final List<String> CONTENTS = List.of("note", "provenance", "obverse die", "countermark", "obverse legend", "reverse description",
            "reference", "left out", "");

    private static String csv(List<List<String>> rows, char mark) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180.builder().setDelimiter(mark).get())) {
            printer.printRecords(rows);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /** Whatever a hand or a program may leave in a cell: signs of YAML and Markdown, line breaks, other scripts; with a letter in it. */
    @Provide
    Arbitrary<String> cells() {
        Arbitrary<String> pieces = Arbitraries.of("a", "Ω", "é", "7", " ", "  ", ": ", "#", " #", "'", "\"", "\\", "\n", "\n\n", "[", "]", "{", "}", ",",
                ";", "|", ">", "-", "- ", "*", "&", "!", "%", "@", "`", "?", "~", "null", "yes", "0x1", "1e3", "\t", "…", "“", "”", "<b>", "\u00A0");
        return pieces.list().ofMinSize(0).ofMaxSize(8).map(list -> String.join("", list)).map(text -> text.isBlank() ? "" : "x" + text);
    }

    @Provide
    Arbitrary<List<List<String>>> tables() {
        return cells().list().ofSize(HEADINGS.size()).list().ofMinSize(1).ofMaxSize(6);
    }

    @Provide
    Arbitrary<List<String>> contents() {
        return Arbitraries.of(CONTENTS).list().ofSize(HEADINGS.size());
    }

    private static String plan(List<String> contents) {
        StringBuilder plan = new StringBuilder("ids: 'tm-{inventory number}'\nevery-row: {collection: town-museum, type: wheel-drachm}\n"
                + "columns:\n  Inv: inventory number\n");
        List<String> seen = new ArrayList<>();
        for (int i = 0; i < contents.size(); i++) {
            String content = contents.get(i);
            boolean again = seen.contains(content) && !List.of("note", "provenance", "reference", "left out").contains(content);
            seen.add(content);
            if (!content.isEmpty() && !again) {
                plan.append("  ").append(HEADINGS.get(i)).append(": ")
                        .append(content.equals("reference") ? "{holds: reference, work: pender}" : content).append('\n');
            }
        }
        return plan.toString();
    }

    private static List<List<String>> numbered(List<List<String>> cells) {
        List<List<String>> rows = new ArrayList<>(List.of(with("Inv", HEADINGS)));
        cells.forEach(row -> rows.add(with("n" + rows.size(), row)));
        return rows;
    }

    private static List<String> with(String first, List<String> others) {
        List<String> row = new ArrayList<>(List.of(first));
        row.addAll(others);
        return row;
    }

    @Property(tries = 150)
    void enteringTwiceIsEnteringOnce(@ForAll("tables") List<List<String>> cells, @ForAll("contents") List<String> contents,
                                     @ForAll("marks") char mark) {
        byte[] list = csv(numbered(cells), mark).getBytes(StandardCharsets.UTF_8);
        String plan = "cells-parted-by: " + Map.of(',', "comma", ';', "semicolon", '\t', "tab").get(mark) + "\nheadings-in-row: 1\n" + plan(contents);
        Tree tree = Lists.tree();
        Entered once = Lists.enter(list, plan, tree, true);
        assertEquals("", errors(once));
        assertEquals(cells.size(), once.made().size());
        Entered twice = Lists.enter(list, plan, Lists.after(tree, once), true);
        assertEquals(Map.of(), twice.files());
        assertEquals(Lists.shown(once.findings().all()), Lists.shown(twice.findings().all()), () -> Lists.made(once));
        assertEquals(cells.size(), twice.look().orElseThrow().there());
    }

    @Provide
    Arbitrary<Character> marks() {
        return Arbitraries.of(',', ';', '\t');
    }

    private static String errors(Entered entered) {
        return Lists.shown(entered.findings().all().stream().filter(one -> one.severity() == Severity.ERROR).toList());
    }

    /** In an entry, or under a column that is left out, or named with its column, or with its row. */
    @Property(tries = 150)
    void everyCellIsSomewhereOrNamed(@ForAll("contents") List<String> contents, @ForAll @Size(min = 1, max = 5) List<Boolean> filled) {
        List<List<String>> cells = new ArrayList<>();
        for (int row = 0; row < filled.size(); row++) {
            List<String> texts = new ArrayList<>();
            for (int column = 0; column < HEADINGS.size(); column++) {
                texts.add(filled.get(row) || column == row ? "word" + row + "x" + column : "");
            }
            cells.add(texts);
        }
        String plan = plan(contents);
        Entered entered = Lists.enter(csv(numbered(cells), ';').getBytes(StandardCharsets.UTF_8), plan, Lists.tree(), false);
        assertEquals("", errors(entered));
        String made = Lists.made(entered);
        for (int column = 0; column < HEADINGS.size(); column++) {
            String heading = HEADINGS.get(column);
            Optional<String> said = plan.lines().filter(line -> line.startsWith("  " + heading + ": ")).findFirst();
            boolean leftOut = said.filter(line -> line.endsWith("left out")).isPresent();
            boolean named = entered.findings().all().stream().map(Finding::what).anyMatch(what -> what.contains("“" + heading + "”, goes nowhere"));
            for (List<String> row : cells) {
                String cell = row.get(column);
                assertTrue(cell.isEmpty() || made.contains(cell) || leftOut || named, cell + "\n" + plan + made);
            }
        }
    }

    /** Whatever stands over the columns and in them, what is proposed can be read, and lacks only what an author must say. */
    @Property(tries = 150)
    void whatIsProposedCanBeRead(@ForAll("tables") List<List<String>> cells, @ForAll("cells") String heading, @ForAll("cells") String other) {
        List<List<String>> rows = numbered(cells);
        rows.set(0, List.of("Inv. no.", "Wt (g)", "Axis", heading, other, heading, "Total"));
        byte[] list = csv(rows, ';').getBytes(StandardCharsets.UTF_8);
        Notebook notebook = new Notebook();
        Optional<Proposal.Proposed> proposed = proposal(list, notebook);
        if (proposed.isEmpty()) {
            assertTrue(notebook.findings().hasErrors());
            return;
        }
        List<String> allowed = proposed.get().known() == 0 ? List.of("missing-key") : List.of("list-file-incomplete", "list-column-unclaimed");
        Entered entered = Lists.enter(list, proposed.get().text(), Lists.tree(), false);
        assertEquals("", Lists.shown(entered.findings().all().stream().filter(one -> !allowed.contains(one.code().id())).toList()),
                proposed.get().text());
    }

    private static Optional<Proposal.Proposed> proposal(byte[] list, Notebook notebook) {
        try {
            return Proposal.of(new NamedBytes("../museum.csv", list),
                    SourceReader.read(Lists.tree()).catalogue().orElseThrow(), notebook);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Whatever bytes there are, there is an answer or a finding. */
    @Property(tries = 300)
    void noListAndNoFileBreaksIt(@ForAll byte[] list, @ForAll("scraps") String rows, @ForAll("scraps") String plan, @ForAll boolean sound) {
        String good = "by: museum\nids: 'tm-{inventory number}'\nevery-row: {collection: town-museum, type: wheel-drachm}\ncolumns:\n"
                + "  Inv: inventory number\n  Wt: {holds: weight, unit: g, second-in: Inv}\n  \"\": note\n";
        for (byte[] one : List.of(list, rows.getBytes(StandardCharsets.UTF_8), ("Inv;Wt\n" + rows).getBytes(StandardCharsets.UTF_16))) {
            Entered entered = Lists.enter(one, sound ? good : "by: museum\ncolumns:\n  Inv: id\n" + plan, Lists.tree(), true);
            assertTrue(entered.look().isPresent() || entered.findings().hasErrors(), () -> Lists.shown(entered.findings().all()));
            proposal(one, new Notebook());
        }
    }

    @Provide
    Arbitrary<String> scraps() {
        return Arbitraries.of("Inv", "Wt", ";", ",", "\t", "\n", "\r\n", "\"", "'", "3,87", "3.87 g", "-", "?", "#N/A", "\uFEFF", "\u0000", "\u001B", "sep=;\n",
                ": ", "  ", "{", "}", "[", "holds: ", "weight", "columns", "signs", "by", "as above", "Total", "\uD83E\uDE99", "e\u0301", "\u200B", "…")
                .list().ofMaxSize(30).map(list -> String.join("", list));
    }

    @Provide
    Arbitrary<String> entries() {
        Arbitrary<String> comment = Arbitraries.of("", "  # seen in 2024", "\n# looked at again\n", "\n\n");
        Arbitrary<String> measured = Arbitraries.of("measured: {by: bench, weight: 3.87 g}", "measured:\n  by: bench\n  weight: 3.87 g   # twice",
                "measured:\n  by: bench\n  # in a ring\n  axis: 'not applicable: uniface'", "");
        Arbitrary<String> also = Arbitraries.of("", "also-measured:\n- {by: old-list, weight: 62 gr}", "also-measured:   # others\n  - by: old-list\n"
                + "    weight: 62 gr\n  # and\n  - {by: comma, weight: '3,9'}", "also-measured:\n    - {by: old-list, weight: 62 gr}");
        Arbitrary<String> rest = Arbitraries.of("collection: {id: cabinet, number: '13'}", "note: |-\n  First.\n\n  # no comment", "dies:\n  obverse: O1");
        Arbitrary<String> end = Arbitraries.of("\n", "", "\n\n# the end\n");
        return Combinators.combine(comment, measured, also, rest, end).as((c, m, a, r, e) ->
                "id: ov-2" + c + "\ntype: wheel-drachm\n" + (m.isEmpty() ? "" : m + c + "\n") + (a.isEmpty() ? "" : a + c + "\n") + r + e);
    }

    @Property
    void addedFiguresLeaveEveryOtherLineAsItIs(@ForAll("entries") String entry, @ForAll boolean windows) {
        String text = windows ? entry.replace("\n", "\r\n") : entry;
        EntryNode member = EntryNode.joined(EntryNode.key("by", EntryNode.words("museum")), EntryNode.key("weight", EntryNode.words("4.01 g")));
        String added = FiguresAdded.to(text, member).orElseThrow(() -> new AssertionError(text));
        List<String> before = List.of(text.split("\n", -1));
        List<String> after = new ArrayList<>(List.of(added.split("\n", -1)));
        for (String line : before) {
            assertTrue(after.remove(line), "“" + line + "” is gone from\n" + added);
        }
        assertTrue(String.join("\n", after).matches("(?s)(also-measured:\\s+)?\\s*- (\\{by: museum, weight: 4.01 g\\}|by: museum\\s+weight: 4.01 g)\\s*"),
                String.join("\n", after));
    }
}
