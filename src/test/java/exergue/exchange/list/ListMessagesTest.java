package exergue.exchange.list;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.Golden;
import exergue.files.MemoryTree;
import exergue.source.list.ListCodes;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Every message on lists, in an approved file. The lists are invented. */
class ListMessagesTest {

    private static final String PLAN = "by: museum\nids: 'tm-{inventory number}'\nevery-row: {collection: town-museum, type: wheel-drachm}\n"
            + "columns:\n  Inv: inventory number\n  Wt: {holds: weight, unit: g}\n";
    private static final String LIST = "Inv;Wt\n7;3.87\n";

    private final StringBuilder all = new StringBuilder();
    private final Map<String, Integer> raised = new LinkedHashMap<>();

    private void say(String title, byte[] list, String plan, Map<String, String> catalogue, boolean addFigures) {
        Entered entered = Lists.enter(list, plan, MemoryTree.ofText(catalogue), addFigures);
        all.append("== ").append(title).append('\n').append(Lists.shown(entered.findings().all())).append('\n');
        entered.findings().all().forEach(one -> raised.merge(one.code().id(), 1, Integer::sum));
    }

    private void say(String title, String list, String plan) {
        say(title, list.getBytes(StandardCharsets.UTF_8), plan, Lists.catalogue(), false);
    }

    @Test
    void messagesAreAsApproved() {
        theList();
        theFile();
        theCells();
        theEntries();
        Golden.check(Path.of("src/test/resources/golden/exchange/list/messages.txt"), all.toString());
        assertEquals(List.of(), ListCodes.all().stream().map(code -> code.id()).filter(id -> !raised.containsKey(id)).toList());
    }

    private void theList() {
        say("a mark that is not closed", "Inv;Wt\n7;\"3.87\n8;3.88\n", PLAN);
        say("no headings", "7;3.87\n8;3.88\n", PLAN);
        say("nothing at all", "\n;;\n", PLAN);
        say("a spreadsheet itself", "PK\u0003\u0004 and so on", PLAN);
        say("headings in a row that is not there", LIST, "headings-in-row: 9\n" + PLAN);
        say("Windows-1252, which nobody has named", "Inv;Wt;Münze\n7;3.87;\n".getBytes(Charset.forName("windows-1252")), PLAN, Lists.catalogue(), false);
        say("Greek in Windows-1253", "Inv;Wt;Αθήνα\n7;3.87;\n".getBytes(Charset.forName("windows-1253")), PLAN, Lists.catalogue(), false);
        say("another encoding than the one that is named", "Inv;Wt;Münze\n7;3.87;\n".getBytes(Charset.forName("windows-1252")),
                "encoding: utf-8\n" + PLAN, Lists.catalogue(), false);
        say("far too large", new byte[NamedBytes.MOST + 1], PLAN, Lists.catalogue(), false);
        say("a comma too many", "Inv,Wt\n7,3,87\n8,3.88\n9,3.89\n", PLAN);
        say("sums", LIST + "Total: ;3.87\n", PLAN);
    }

    private void theFile() {
        say("slips in the file", LIST, PLAN.replace("holds: weight", "holds: wieght").replace("ids:", "idds:").replace("collection: town", "colection: town"));
        say("an answer that is none", LIST, PLAN + "signs: {'-': as abve, '?': missing}\n");
        say("a heading that is not there, and so a column that goes nowhere", LIST, PLAN.replace("Wt:", "Wgt:"));
        say("columns that nobody claims", "Inv;Wt;Tray;Seen by;\n7;3.87;A;;x\n8;3.88;B;X;\n", PLAN);
        say("nothing said of ids, hands and types", LIST, "columns:\n  Inv: inventory number\n  Wt: weight\n");
        say("names that are none of the catalogue", "Inv;Wt;Metal\n7;3.87;AR\n", PLAN.replace("town-museum", "town-musem")
                + "  Metal: {holds: metal, words: {AR: silvre}}\n");
        say("a pattern of which nothing is known", LIST, PLAN.replace("{inventory number}", "{inventory no}"));
        say("a pattern without braces", LIST, PLAN.replace("{inventory number}", "x"));
        say("a convention and a work that are not declared", "Inv;Wt;Ref;No\n7;3.87;12;1\n",
                PLAN.replace("by: museum", "by: museeum") + "  Ref: {holds: reference, work: pendre}\n  No: reference\n");
        say("two columns of weights", "Inv;Wt;Wt 2\n7;3.87;3.88\n", PLAN + "  Wt 2: weight\n");
        say("two columns of axes, and one named for the hand that is not there", "Inv;Wt;A;B\n7;3.87;6;6\n",
                PLAN.replace("unit: g", "unit: g, by-in: Who") + "  A: axis\n  B: axis\n");
    }

    private void theCells() {
        say("signs", "Inv;Wt;Axis;Prov\n7;-;;?\n8;-;6;x\n9;n/a;12;\n", PLAN + "  Axis: {holds: axis, unit: h}\n  Prov: provenance\n");
        say("formulas that have gone wrong", "Inv;Wt;Prov\n7;#N/A;#BEZUG!\n", PLAN + "  Prov: provenance\n");
        say("figures that cannot be read", "Inv;Wt\n7;3.8.7\n8;three\n9;12 mm\n10;3,87\n11;3,88\n12;three\n", PLAN);
        say("gr, in every row", "Inv;Wt\n7;59.7 gr\n8;59.8 gr\n9;59.9 gr\n", PLAN.replace(", unit: g", ""));
        say("no unit anywhere", "Inv;Th\n7;2.1\n8;2.2\n", PLAN.replace("Wt: {holds: weight, unit: g}", "Th: {holds: thickness, by: comma}"));
        say("hands row by row", "Inv;Wt;By\n7;3.87;bench\n8;3.88;benhc\n9;3.89;\n", PLAN.replace("unit: g", "unit: g, by-in: By"));
        say("words that the catalogue does not know", "Inv;Wt;Type;Coll;Dam\n7;3.87;wheel-drahm;TM;bent\n8;3.88;Rad;XX;\n9;3.89;Rad;TM;\n",
                PLAN + "  Type: type\n  Coll: collection\n  Dam: damage\n");
        say("places", "Inv;Wt;Spot;No\n7;3.87;under the oak;1\n8;3.88;;2\n9;3.89;under the oak;3\n", PLAN + "  Spot: find-spot\n  No: find number\n");
        say("a place in another cell", "Inv;Wt;Spot;Note\n7;3.87;Third spring;found below the third spring\n8;3.88;Third spring;in springtime\n",
                PLAN + "  Spot: {holds: find-spot, words: {Third spring: harbour}}\n  Note: note\n");
        say("types", "Inv;Wt;Mint;Metal;Den\n7;3.87;Orvane;silver;\n8;3.88;Orvane;gold;\n9;3.89;Orvane;silver;obol\n10;3.9;Orvain;silver;\n11;3.9;;;\n",
                PLAN.replace(", type: wheel-drachm", "") + "  Mint: mint\n  Metal: metal\n  Den: denomination\n");
        say("a type, and a mint and a metal that are not its own", "Inv;Wt;Type;Mint;Metal\n7;3.87;wheel-drachm;Orvane;copper-alloy\n",
                PLAN + "  Type: type\n  Mint: mint\n  Metal: metal\n");
        say("two figures of one hand", "Inv;Wt;A;B;C\n7;;3.87;bench;3.88\n8;;3.87;bench;3.87\n", PLAN.replace("Wt: {holds: weight, unit: g}", "Wt: left out")
                + "  A: {holds: weight, by-in: B}\n  C: {holds: weight, by: bench}\n");
        say("no id, twice the same, and an id that is none", "Inv;Wt\n;3.87\n8;3.88\n8;3.89\n", PLAN);
        say("ids of its own", "Inv;Wt\nTM 7;3.87\n", PLAN.replace("inventory number", "id").replace("{id}", "{id}"));
        say("a number, but of which collection", LIST, PLAN.replace("collection: town-museum, ", ""));
    }

    private void theEntries() {
        String plan = "by: bench\ncolumns:\n  Id: id\n  No: inventory number\n  Wt: {holds: weight, unit: g}\n  Axis: {holds: axis, unit: h}\n"
                + "  Th: {holds: thickness, unit: mm}\n  O: obverse die\n  Prov: provenance\nevery-row: {collection: cabinet, type: wheel-drachm}\n";
        say("coins that are there", "Id;No;Wt;Axis;Th;O;Prov\nov-1;12;3.89;7;2.1;O9;\nov-2;13;4.03;12;2.2;O1;from A\n", plan);
        say("an id and a number of two coins", "Id;No;Wt;Axis;Th;O;Prov\nov-1;13;3.98;6;2.1;O1;x\n", plan);
        Map<String, String> catalogue = Lists.catalogue();
        catalogue.put("coins/ov-2.yaml", catalogue.get("coins/ov-2.yaml") + "also-measured: [{by: old-list, weight: 62 gr}]\n");
        Map<String, String> named = Lists.catalogue();
        named.put("coins/tm-7.yaml", named.get("coins/ov-2.yaml").replace("ov-2", "tm-8"));
        say("a file of that name, with another coin in it", LIST.getBytes(StandardCharsets.UTF_8), PLAN, named, false);
        say("a list in brackets, to which no line can be added", "No;Wt\n13;4.01\n".getBytes(StandardCharsets.UTF_8),
                PLAN.replace("Inv:", "No:").replace("town-museum", "cabinet"), catalogue, true);
    }
}
