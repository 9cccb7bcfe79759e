package exergue.exchange.list;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.model.Written;
import exergue.finding.Place;
import exergue.source.list.ListPlan;
import exergue.source.text.Notebook;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files as spreadsheets really save them, against RFC 4180 (Y. Shafranovich, October 2005), whose rules are named by their numbers. */
class SheetReaderTest {

    private final Notebook notebook = new Notebook();

    private Optional<Sheet> read(byte[] bytes, String encoding) {
        Optional<Written<String>> told = Optional.ofNullable(encoding).map(name -> new Written<>(name, new Place("list.yaml", 1, 11, name.length())));
        return SheetReader.read(bytes, "list.csv", new ListPlan.Layout(told, Optional.empty(), Optional.empty(), List.of()), notebook);
    }

    private Sheet read(String text) {
        return read(text.getBytes(StandardCharsets.UTF_8), null).orElseThrow(() -> new AssertionError(notebook.findings().all().toString()));
    }

    private static String rows(Sheet sheet) {
        return sheet.rows().stream().map(row -> row.number() + ":" + row.cells().stream().map(SheetCell::text).collect(Collectors.joining("|")))
                .collect(Collectors.joining(" ")).replace("\n", "\\n");
    }

    /** In the first column § is a line feed, ¶ is carriage return and line feed. */
    @ParameterizedTest
    @CsvSource(delimiterString = "=>", quoteCharacter = '`', value = {
        "Inv,Wt¶1,3.87¶2,4.02¶                 => 2:1|3.87 3:2|4.02      => RFC 4180 section 2, rule 1: rows end with CRLF",
        "Inv,Wt¶1,3.87                         => 2:1|3.87               => rule 2: the last row may lack it",
        "Inv,Wt§1,3.87§                        => 2:1|3.87               => not in the RFC: LF alone",
        "Inv,Wt¶\"1\",\"3.87\"¶                => 2:1|3.87               => rule 5: cells may be in quotation marks",
        "Inv,Note¶1,\"a,b\"¶                   => 2:1|a,b                => rule 6: commas in quotation marks",
        "Inv,Note¶1,\"a¶b\"¶2,c¶               => 2:1|a\\nb 3:2|c        => rule 6: line breaks in quotation marks; one row of the sheet",
        "Inv,Note¶1,\"say \"\"a\"\"\"¶         => 2:1|say \"a\"          => rule 7: a mark in quotation marks is doubled",
        "Inv,Note¶1,17\" wide¶                 => 2:1|17\" wide          => rule 5: a mark in a cell that is not quoted stands for itself",
        "Inv;Wt;Dm¶1;3,87;18,2¶2;4,02;17,9¶    => 2:1|3,87|18,2 3:2|4,02|17,9 => semicolons, decimal commas",
        "Inv\tWt¶1\t3,87¶                      => 2:1|3,87               => tabs",
        "Inv;Note¶1;a, b, c¶2;d, e, f¶         => 2:1|a, b, c 3:2|d, e, f => commas in texts are many, semicolons part the cells",
        "sep=;¶Inv;Wt¶1;3,87¶                  => 2:1|3,87               => a line that names the mark is no row",
        "Inv,Wt¶¶1,3.87¶,,¶2,4.02¶             => 3:1|3.87 5:2|4.02      => empty rows count, but are no coins",
        "The Museum¶;¶Inv;Wt¶1;3,87¶           => 4:1|3,87               => rows above the headings",
        "Inv,Wt,,¶1,3.87,,¶                    => 2:1|3.87||             => empty columns at the end",
    })
    void isReadAsSpreadsheetsSaveIt(String text, String rows, String why) {
        assertEquals(rows.strip(), rows(read(text.strip().replace("¶", "\r\n").replace('§', '\n'))), why);
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16", "UTF-16LE", "UTF-16BE", "windows-1252"})
    void theEncodingIsToldByTheBytes(String encoding) {
        Sheet sheet = read("Inv.;Münzstätte\r\n1;Orväne\r\n".getBytes(Charset.forName(encoding)), null).orElseThrow();
        assertEquals(List.of("Inv.", "Münzstätte"), sheet.headings());
        assertEquals("2:1|Orväne", rows(sheet));
        assertTrue(sheet.how().startsWith(encoding.startsWith("UTF-16") ? "UTF-16, " : encoding.equals("UTF-8") ? "UTF-8, " : "Windows-1252, "), sheet.how());
        assertEquals(encoding.equals("windows-1252"), sheet.encodingTaken());
        assertEquals(List.of(), notebook.findings().all());
    }

    @Test
    void aByteOrderMarkIsNoPartOfTheFirstHeading() {
        assertEquals(List.of("Inv", "Wt"), read("\uFEFFInv;Wt\n1;3,87\n").headings());
        assertEquals(List.of("Inv", "Wt"), read("\uFEFFInv;Wt\n1;3,87\n".getBytes(StandardCharsets.UTF_16LE), "utf-16").orElseThrow().headings());
    }

    /** Bytes of “Αθήνα” in Windows-1253: five letters beyond ASCII in a row. */
    @Test
    void greekInAnOldEncodingIsNotGuessed() {
        byte[] greek = "Inv;Πόλη\n1;Αθήνα\n".getBytes(Charset.forName("windows-1253"));
        assertTrue(read(greek, null).isEmpty());
        assertEquals("list-encoding", notebook.findings().all().get(0).code().id());
        assertEquals("2:1|Αθήνα", rows(read(greek, "windows-1253").orElseThrow()));
    }

    @Test
    void headingsThatAreAlikeOrEmptyAreToldApart() {
        assertEquals(List.of("Inv", "Wt", "Wt (2)", "column D", "Dm. in mm"), read("Inv;Wt;Wt;;\"Dm.\nin mm\"\n1;3,87;3,88;x;18\n").headings());
    }

    @Test
    void everyCellHasItsPlace() {
        Sheet sheet = read("Inv,Note,Wt\r\n1,\"a \"\"b\"\",\r\nc\",3.87\r\n");
        assertEquals("list.csv:2:1 list.csv:2:4 list.csv:3:4", sheet.rows().get(0).cells().stream().map(cell -> cell.place().toString())
                .collect(Collectors.joining(" ")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"Inv;Wt~1;\"3,87~ | list-not-a-table", "1;2;3~4;5;6~ | list-not-a-table", "'' | list-not-a-table",
        "PK\u0003\u0004 | list-not-a-table", "Inv;Wt~1;3\u00078~ | control-character"})
    void whatIsNoTableIsSaid(String text, String code) {
        read(text.replace('~', '\n').getBytes(StandardCharsets.UTF_8), null);
        assertEquals(code, notebook.findings().all().stream().map(one -> one.code().id()).collect(Collectors.joining(", ")));
    }
}
