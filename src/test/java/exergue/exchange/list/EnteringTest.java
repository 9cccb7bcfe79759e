package exergue.exchange.list;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.Exergue;
import exergue.Golden;
import exergue.Progress;
import exergue.files.MemoryTree;
import exergue.files.Tree;
import exergue.finding.Finding;
import exergue.finding.Severity;
import exergue.source.SourceReader;
import exergue.source.text.Notebook;
import exergue.source.tidy.Tidy;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a list makes of a catalogue. Every list is invented. */
class EnteringTest {

    private static final String PLAN = """
            by: museum
            ids: 'tm-{inventory number}'
            every-row: {collection: town-museum, type: wheel-drachm}
            columns:
              Inv: inventory number
              Wt: {holds: weight, unit: g}
            """;

    private static Entered enter(String list, String plan) {
        return Lists.enter(list, plan);
    }

    @Test
    void everyKindOfColumnGoesWhereItBelongs() {
        Entered entered = enter("""
                Inv;Wt;Wt 2;Diam;Axis;Th;O;R;Leg;Spot;Layer;No;Prov;Ref;Dam;Ticket;State
                7;3.87;59.7 gr;18 x 17;6;2.1;O1;R2;ΟΡΟ[Υ];Quay;C 4;118;from A; 17/18;ch, corr;"old ""ticket"": no. 7";fine
                """, """
                by: museum
                ids: 'tm-{inventory number}'
                every-row: {collection: TM, type: wheel-drachm}
                columns:
                  Inv: inventory number
                  Wt: {holds: weight, unit: g}
                  Wt 2: {holds: weight, by: old-list}
                  Diam: {holds: diameter, unit: mm}
                  Axis: {holds: axis, unit: h}
                  Th: {holds: thickness, unit: mm}
                  O: obverse die
                  R: reverse die
                  Leg: obverse legend
                  Spot: {holds: find-spot, words: {quay: harbour}}
                  Layer: find context
                  No: find number
                  Prov: provenance
                  Ref: {holds: reference, work: pender, relation: this coin, split-at: /}
                  Dam: {holds: damage, split-at: ',', words: {ch: chipped, corr: corroded}}
                  Ticket: {holds: note, introduced-by: 'Ticket:'}
                  State: {holds: note, introduced-by: 'State:'}
                """);
        assertEquals("", Lists.shown(entered.findings().all()));
        Golden.check(Path.of("src/test/resources/golden/exchange/list/every-column.yaml"), Lists.made(entered));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", value = {
        "3.87    | ''                | museum | 3.87",
        "3.87    | 'unit: g'         | museum | 3.87 g",
        "3.870   | 'unit: g'         | museum | 3.870 g",
        "3.87 g  | 'unit: g'         | museum | 3.87 g",
        "59.7 grains | 'unit: g'     | museum | 59.7 grains",
        "c. 3.9  | 'unit: g'         | museum | c. 3.9 g",
        "3.9?    | 'unit: g'         | museum | 3.9? g",
        "3,87    | 'unit: g'         | comma  | 3,87 g",
        "59.7 gr | ''                | old-list | 59.7 gr",
        "59.7    | 'unit: grains'    | museum | 59.7 grains",
        "missing: in a frame | 'unit: g' | museum | 'missing: in a frame'",
    })
    void aFigureKeepsItsDigitsAndGetsTheUnitOfItsColumn(String cell, String unit, String by, String written) {
        String column = unit.isEmpty() ? "weight" : "{holds: weight, " + unit + "}";
        Entered entered = enter("Inv;Wt\n7;" + cell + "\n", PLAN.replace("by: museum", "by: " + by).replace("{holds: weight, unit: g}", column));
        assertEquals("", Lists.shown(entered.findings().all()));
        assertTrue(Lists.made(entered).replace("'", "").contains("weight: " + written.replace("'", "")), Lists.made(entered));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "comma | museum | 3,87 | 3.87 g", "comma | comma | 3,87 | 3,87 g", "point | comma | 3.87 | 3,87 g", "point | museum | 3.87 | 3.87 g"})
    void theDecimalMarkOfASpreadsheetBecomesThatOfTheConvention(String mark, String by, String cell, String written) {
        Entered entered = enter("Inv;Wt\n7;" + cell + "\n", "decimal-mark: " + mark + "\n" + PLAN.replace("by: museum", "by: " + by));
        assertTrue(Lists.made(entered).contains("weight: " + written), Lists.shown(entered.findings().all()) + Lists.made(entered));
    }

    @Test
    void anotherMarkThanTheOneThatIsNamedIsAnErrorAndSaidOnceForAllRows() {
        Entered entered = enter("Inv;Wt\n7;3.87\n8;3.88\n9;3,89\n", "decimal-mark: comma\n" + PLAN);
        assertEquals(1, entered.findings().all().size(), Lists.shown(entered.findings().all()));
        assertTrue(entered.findings().all().get(0).what().startsWith("Row 2, column “Wt” (and row 3): "), entered.findings().all().get(0).what());
    }

    /** What is missing, does not apply or cannot be read is never mixed up, and never guessed. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "-   | {'-': 'missing: not weighed'}              | missing: not weighed",
        "?   | {'?': 'illegible: the ink has run'}        | illegible: the ink has run",
        "n/a | {n/a: 'not applicable: set in a ring'}     | not applicable: set in a ring",
        "''  | {empty: 'missing: not on the list'}        | missing: not on the list",
    })
    void signsAreAnsweredOnce(String cell, String signs, String written) {
        String list = "Inv;Wt;Axis\n7;" + cell + ";6\n8;3.88;12\n";
        String plan = PLAN + "  Axis: {holds: axis, unit: h}\n";
        assertEquals("list-sign-unanswered", Lists.codes(enter(list, plan)));
        Entered answered = enter(list, "signs: " + signs + "\n" + plan);
        assertEquals("", Lists.codes(answered));
        assertTrue(Lists.made(answered).contains("weight: '" + written + "'"), Lists.made(answered));
    }

    @Test
    void aSignMayMeanSomethingElseUnderOneHeading() {
        Entered entered = enter("Inv;Wt;Axis;Prov\n7;-;-;-\n8;4.1;6;from A\n9;4.2;12;do.\n", """
                signs: {'-': 'missing: not weighed', 'do.': as above}
                """ + PLAN + """
                  Axis: {holds: axis, unit: h, signs: {'-': 'not applicable: uniface'}}
                  Prov: provenance
                """);
        assertEquals("", Lists.codes(entered));
        assertTrue(Lists.made(entered).contains("weight: 'missing: not weighed'\n  axis: 'not applicable: uniface'"), Lists.made(entered));
        assertEquals(2, Lists.made(entered).split("from A", -1).length - 1, "the sign for “as above” repeats it once");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"18 | 17 | 18 x 17 mm", "18 | '' | 18 mm", "18 | - | 18 mm", "18,2 | 17 | 18.2 x 17 mm",
        "18 mm | 17 mm | 18 mm x 17 mm"})
    void twoDiametersInTwoColumnsBecomeOne(String first, String second, String written) {
        Entered entered = enter("Inv;Wt;D;D\n7;4;" + first + ";" + second + "\n", "decimal-mark: comma\n" + PLAN
                + "  D: {holds: diameter, unit: mm, second-in: D (2)}\n");
        assertEquals("", Lists.shown(entered.findings().all()));
        assertTrue(Lists.made(entered).contains("diameter: " + written + "\n"), Lists.made(entered));
    }

    /** The cell above, whatever it said: a sign that repeats never reaches over one that says there is no figure. */
    @Test
    void asAboveRepeatsAlsoWhatIsMissing() {
        Entered entered = enter("Inv;Wt\n1;3.87\n2;do.\n3;-\n4;do.\n5;?\n6;do.\n", "signs: {'-': 'missing: not weighed', do.: as above, '?': left out}\n" + PLAN);
        assertEquals("", Lists.codes(entered));
        assertEquals(List.of("3.87 g", "3.87 g", "missing: not weighed", "missing: not weighed"), Lists.made(entered).lines()
                .filter(line -> line.contains("weight:")).map(line -> line.replaceAll(".*weight: |'|}", "")).toList());
    }

    @Test
    void handsMayStandInTheRows() {
        Entered entered = enter("Inv;Wt;Who\n7;3.87;JC\n8;3.88;museum\n9;3.89;\n", PLAN.replace("unit: g}", "unit: g, by-in: Who}")
                + "  Who: {holds: left out, words: {jc: bench}}\n");
        assertEquals("", Lists.shown(entered.findings().all()));
        assertEquals(List.of("by: bench", "by: museum", "by: museum"), Lists.made(entered).lines().filter(line -> line.contains("by: "))
                .map(line -> line.replaceAll(".*(by: [a-z]+).*", "$1")).toList());
    }

    @Test
    void theTypeIsTheOnlyOneOfItsMintAndDenomination() {
        String plan = """
                by: museum
                ids: 'tm-{inventory number}'
                every-row: {collection: town-museum}
                columns:
                  Inv: inventory number
                  Mint: mint
                  Den: {holds: denomination, words: {dr.: Drachm}}
                  Ref: {holds: type reference, work: pender}
                """;
        Entered entered = enter("Inv;Mint;Den;Ref\n7;Orvane;dr.;\n8;orvane;OBOL;\n9;;;1\n", plan);
        assertEquals("", Lists.shown(entered.findings().all()));
        assertEquals(List.of("type: wheel-drachm", "type: wheel-obol", "type: wheel-drachm"),
                Lists.made(entered).lines().filter(line -> line.startsWith("type:")).toList());
    }

    @Test
    void placesAreNeverWrittenQuotedOrShown() {
        Entered entered = enter("Inv;Wt;Spot\n7;3.87;below the third spring\n8;x;\"by the \"\"old\"\" mill,\nleft bank\"\n",
                PLAN + "  Spot: {holds: find-spot, words: {the brook: harbr}}\n");
        Entered named = enter("Inv;Wt;Spot\n7;3.87;below the third spring\n8;x;\"by the \"\"old\"\" mill,\nleft bank\"\n",
                PLAN + "  Spot: find-spot\n");
        String all = Lists.shown(entered.findings().all()) + entered.shown() + Lists.made(entered) + Lists.shown(named.findings().all())
                + named.shown() + Lists.made(named);
        assertAll(() -> assertTrue(Lists.codes(entered).contains("list-unknown-word") && Lists.codes(named).contains("list-unknown-word")),
                () -> assertFalse(all.contains("spring") || all.contains("brook") || all.contains("mill") || all.contains("bank"), all));
    }

    /** Nor in any other cell of the row, whatever that is. */
    @ParameterizedTest
    @CsvSource({"note, true, found BELOW the third spring", "provenance, true, 'bought from the finder, below the third spring'",
        "find context, true, below the third spring", "note, false, harbour quarter", "note, false, spring", "left out, false, below the third spring"})
    void placesAreNotWrittenByAnotherWay(String content, boolean refused, String text) {
        Entered entered = enter("Inv;Wt;Spot;X\n7;3.87;below the third spring;\"" + text + "\"\n",
                PLAN + "  Spot: {holds: find-spot, words: {below the third spring: harbour}}\n  X: " + content + "\n");
        assertEquals(refused ? "list-exact-place" : "", Lists.codes(entered));
        String all = Lists.shown(entered.findings().all()) + entered.shown();
        assertFalse(all.toLowerCase(java.util.Locale.ROOT).contains("third spring"), all);
    }

    /** A place that is not declared yet may stand in a remark of its row, and be the first word with an accent. */
    @Test
    void placesThatAreNotDeclaredYetAreNotShownEither() throws IOException {
        byte[] list = "Inv;Wt;Findspot;Notes\n7;x;Höllenfels;from Höllenfels\n".getBytes(Charset.forName("windows-1252"));
        Entered entered = Lists.enter(list, PLAN.replace("columns:", "columns:\n  Notes: note") + "  Findspot: find-spot\n", Lists.tree(), false);
        Notebook notebook = new Notebook();
        Proposal.of(new NamedBytes("../museum.csv", list), SourceReader.read(Lists.tree()).catalogue().orElseThrow(), notebook);
        String all = Lists.shown(entered.findings().all()) + entered.shown() + Lists.shown(notebook.findings().all());
        assertAll(() -> assertTrue(all.contains("list-encoding-taken")), () -> assertFalse(all.contains("llenfels"), all));
    }

    /** Ids are made of such words; and of two remarks the one is named that has the place in it. */
    @Test
    void anIdMayHaveTheWordsOfAPlaceInIt() {
        String columns = "  Spot: {holds: find-spot, words: {Lower Harbour: harbour, Wheel: harbour}}\n  A: note\n  B: note\n";
        Entered sound = enter("Inv;Wt;Spot;A;B\n7;3.87;Wheel;worn;chipped\n", PLAN + columns);
        Entered named = enter("Inv;Wt;Spot;A;B\n7;3.87;Wheel;worn;from Lower Harbour\n", PLAN + columns);
        assertAll(() -> assertEquals("", Lists.codes(sound)), () -> assertTrue(Lists.made(sound).contains("wheel-drachm")),
                () -> assertTrue(named.findings().all().get(0).what().startsWith("Row 2, column “B”: The words name"), Lists.shown(named.findings().all())));
    }

    @Test
    void placesAreNotQuotedWhereAnEntryIsCompared() {
        Entered entered = enter("Id;Spot;Notes\nov-1;below the third spring;found below the third spring\n", "columns:\n  Id: id\n  Notes: note\n"
                + "  Spot: {holds: find-spot, words: {below the third spring: harbour}}\nevery-row: {type: wheel-drachm}\n");
        String all = Lists.shown(entered.findings().all()) + entered.shown();
        assertAll(() -> assertTrue(all.contains("list-exact-place")), () -> assertFalse(all.contains("third spring"), all));
    }

    @Test
    void aCoinThatIsThereIsComparedAndItsEntryStays() {
        String list = "Id;Wt;Axis;O;Prov\nov-1;3.89;7;O1;\nov-2;4.03;12;O1;from A\n";
        String plan = "by: bench\ncolumns:\n  Id: id\n  Wt: {holds: weight, unit: g}\n  Axis: {holds: axis, unit: h}\n  O: obverse die\n"
                + "  Prov: provenance\nevery-row: {type: bull-bronze}\n";
        Entered entered = enter(list, plan);
        assertEquals(Map.of(), entered.files());
        Golden.check(Path.of("src/test/resources/golden/exchange/list/compared.txt"), Lists.shown(entered.findings().all()));
    }

    /** Of ov-2 the entry has 4.03 g and 12 h. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"4.03 g | 12 h | ''", "4.03 | 12 | ''", "4030 mg | 360° | ''", "4.030 g | 12 h | list-differs-from-entry",
        "4.0 g | 12 h | list-differs-from-entry", "4.03 g | ↓ | list-differs-from-entry", "c. 4.03 g | 12 h | list-differs-from-entry",
        "missing: lost | 12 h | list-differs-from-entry"})
    void theSameFigureMayBeWrittenInAnotherWay(String weight, String axis, String code) {
        Entered entered = enter("Id;Wt;Axis\nov-2;" + weight + ";" + axis + "\n", "by: bench\nevery-row: {type: wheel-drachm}\ncolumns:\n  Id: id\n"
                + "  Wt: {holds: weight, unit: g}\n  Axis: {holds: axis, unit: h}\n");
        assertEquals(code, Lists.codes(entered), () -> Lists.shown(entered.findings().all()));
    }

    @Test
    void figuresAreAddedWhenAskedForAndOnlyOnce() throws IOException {
        String list = "No;Wt\n12;3.99\n13;4.01\n";
        String plan = PLAN.replace("town-museum", "cabinet").replace("Inv: inv", "No: inv");
        Map<String, String> files = Lists.catalogue();
        files.put("coins/ov-1.yaml", "# Seen in 2024.\n\nid: ov-1\ntype: wheel-drachm\nalso-measured:   # others\n  - {by: old-list, weight: 61.4 gr}\n"
                + "collection: {id: cabinet, number: '12'}   # in a frame\n");
        Tree tree = MemoryTree.ofText(files);
        Entered unasked = Lists.enter(list.getBytes(StandardCharsets.UTF_8), plan, tree, false);
        assertEquals(2, unasked.look().orElseThrow().without());
        assertEquals(Map.of(), unasked.files());
        Entered asked = Lists.enter(list.getBytes(StandardCharsets.UTF_8), plan, tree, true);
        assertEquals(List.of("coins/ov-1.yaml", "coins/ov-2.yaml"), List.copyOf(asked.changed().keySet()));
        String before = Lists.text(tree.read("coins/ov-1.yaml"));
        String after = Lists.text(asked.changed().get("coins/ov-1.yaml"));
        assertEquals(before.replace("61.4 gr}\n", "61.4 gr}\n  - {by: museum, weight: 3.99 g}\n"), after);
        Entered again = Lists.enter(list.getBytes(StandardCharsets.UTF_8), plan, Lists.after(tree, asked), true);
        assertEquals(Map.of(), again.files());
    }

    @Test
    void newEntriesAreTidyAndPassTheCheck() throws IOException {
        String page = Files.readString(Path.of("docs/lists.md"));
        Map<String, String> files = Lists.catalogue();
        files.merge("conventions.yaml", "\n" + block(page, "conventions.yaml"), String::concat);
        files.put("collections.yaml", block(page, "collections.yaml") + "cabinet: {name: The Cabinet, sign: C}\n");
        files.put("find-spots.yaml", block(page, "find-spots.yaml"));
        Tree tree = MemoryTree.ofText(files);
        Entered entered = Lists.enter(block(page, "my-museum.csv").getBytes(StandardCharsets.UTF_8), block(page, "my-museum.yaml"), tree, false);
        assertEquals(4, entered.made().size(), Lists.shown(entered.findings().all()));
        Golden.check(Path.of("src/test/resources/golden/exchange/list/docs.yaml"), Lists.made(entered));
        Tree after = Lists.after(tree, entered);
        assertEquals(List.of(), Tidy.of(after).rewritten().keySet().stream().filter(entered.made()::containsKey).toList());
        List<Finding> errors = Exergue.check(after, Progress.SILENT).findings().all().stream()
                .filter(one -> one.severity() == Severity.ERROR).toList();
        assertEquals(List.of(), errors);
    }

    static String block(String page, String file) {
        Matcher block = Pattern.compile("<!-- (?:file|keys of): " + Pattern.quote(file) + " -->\n```\\w+\n(.*?)```", Pattern.DOTALL).matcher(page);
        assertTrue(block.find(), file);
        return block.group(1);
    }

    /** Second columns, signs in words and what spreadsheets make of figures are for the author to say. */
    @Test
    void whatAnAuthorMustSayIsProposedInComments() throws IOException {
        String text = Proposal.of(new NamedBytes("../list.csv", ("Inv.;Gew. g;Gew. (g) 1890;Dm. 1;Dm. 2;Stempelst.;Kat.\n7;k. A.;3,9;18;17;02-Jun;5\n"
                + "8;3,87;3,9;18;17;#DIV/0!;6\n").getBytes(StandardCharsets.UTF_8)), SourceReader.read(Lists.tree()).catalogue().orElseThrow(),
                new Notebook()).orElseThrow().text();
        assertAll(() -> assertTrue(text.contains("# by: …\n")), () -> assertTrue(text.contains("# every-row: {collection: …, type: …}")),
                () -> assertTrue(text.contains("  Gew. g: {holds: weight, unit: g}\n")),
                () -> assertTrue(text.contains("  # Gew. (g) 1890: {holds: weight, unit: g, by: …}")),
                () -> assertTrue(text.contains("  # Dm. 2: {holds: diameter, by: …}   # whose? Or left out; or the other way across")),
                () -> assertTrue(text.contains("  # Kat.: {holds: reference, work: …}")),
                () -> assertTrue(text.contains("#   k. A.: 'missing") && text.contains("#   02-Jun: …   # made by") && text.contains("#   '#DIV/0!': …"), text));
    }

    /** What a spreadsheet has spoilt is asked for, whatever the column; a word may stand for a figure. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"1.2E+05 | 3.87 | 6 | list-row-without-id, list-sign-unanswered", "7 | 3.87 | 02-Jun | list-sign-unanswered",
        "7 | 3.87 | 2. Juni | list-sign-unanswered", "7 | k. A. | 6 | list-sign-unanswered", "7 | 3.87 | six | ''"})
    void whatASpreadsheetHasSpoiltIsAskedFor(String number, String weight, String axis, String codes) {
        Entered entered = enter("Inv;Wt;Axis\n" + number + ";" + weight + ";" + axis + "\n", PLAN + "  Axis: {holds: axis, words: {six: 6 h}}\n");
        assertTrue(Lists.codes(entered).startsWith(codes) && Lists.codes(entered).isEmpty() == codes.isEmpty(), Lists.codes(entered));
        assertEquals(codes.isEmpty(), Lists.made(entered).contains("axis: 6 h"));
    }

    /** A heading in between is not entered as a coin, even where every row has a type and an empty cell an answer. */
    @ParameterizedTest
    @CsvSource({"Drachms, list-row-like-a-sum", "1931/7, ''"})
    void aHeadingInBetweenIsNoCoin(String first, String codes) throws IOException {
        String list = "Inv;Wt;Axis\n" + first + ";;\n8;3.87;6\n";
        assertEquals(codes, Lists.codes(enter(list, "signs: {empty: 'missing: why'}\n" + PLAN + "  Axis: axis\n")));
        assertEquals("", Lists.codes(enter(list, "rows-left-out: [Drachms]\nsigns: {empty: 'missing: why'}\n" + PLAN + "  Axis: axis\n")));
        String proposed = Proposal.of(new NamedBytes("../list.csv", list.getBytes(StandardCharsets.UTF_8)),
                SourceReader.read(Lists.tree()).catalogue().orElseThrow(), new Notebook()).orElseThrow().text();
        assertEquals(!codes.isEmpty(), proposed.contains("rows-left-out: [Drachms]"), proposed);
    }

    @Test
    void whatOneLineMendsIsSaidOnce() {
        Entered hands = enter("Inv;Wt;Axis\n7;3.87;6\n", PLAN.replace("by: museum\n", "") + "  Axis: axis\n");
        Entered thousands = enter("Inv;Wt\n7;\"3,870\"\n8;\"3,910\"\n", PLAN.replace("unit: g", "unit: mg"));
        assertAll(() -> assertEquals(1, hands.findings().all().size()), () -> assertEquals(1, thousands.findings().all().size()),
                () -> assertTrue(thousands.findings().all().get(0).what().contains("(and row 3)")));
    }

    @Test
    void whatIsProposedIsAsApproved() throws IOException {
        Proposal.Proposed proposed = Proposal.of(new NamedBytes("../my-museum.csv",
                block(Files.readString(Path.of("docs/lists.md")), "my-museum.csv").getBytes(StandardCharsets.UTF_8)),
                SourceReader.read(Lists.tree()).catalogue().orElseThrow(), new Notebook()).orElseThrow();
        Golden.check(Path.of("src/test/resources/golden/exchange/list/proposed.yaml"), proposed.text());
        assertEquals(8, proposed.known());
    }
}
