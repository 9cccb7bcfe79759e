package exergue.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.files.FolderTree;
import exergue.files.MemoryTree;
import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.model.Catalogue;
import exergue.source.SourceReader;
import exergue.study.match.FreshCoin;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sheets of fresh measurements, sound and broken. */
class MeasurementSheetTest {

    private static Catalogue demo;

    @BeforeAll
    static void readTheDemo() throws IOException {
        demo = SourceReader.read(new FolderTree(Path.of("catalogue-src"))).catalogue().orElseThrow();
    }

    private static MeasurementSheet.Sheet read(String text, Convention convention) throws IOException {
        return MeasurementSheet.read(MemoryTree.ofText(Map.of("sheet.csv", text)), "sheet.csv", demo, convention);
    }

    private static String faults(String text) throws IOException {
        return read(text, Convention.UNDECLARED).findings().all().stream()
                .map(finding -> finding.place() + " " + finding.code().id()).collect(Collectors.joining("; "));
    }

    private static String shown(FreshCoin coin) {
        return coin.label() + " [" + coin.ticket().map(Object::toString).orElse("") + "] " + coin.measured().readings().values().stream()
                .map(reading -> reading.value().recorded()).collect(Collectors.joining(", "));
    }

    @ParameterizedTest
    @ValueSource(strings = {"label,ticket,weight,diameter,axis\n1,ark-002,10.43 g,17.5-20 mm,\n",
            "Label;Ticket;Weight;Diameter\n1;ark-002;10.43 g;17.5-20 mm\n", "label\tticket\tweight\tdiameter\r\n1\tark-002\t10.43 g\t17.5-20 mm\r\n",
            "\uFEFFdiameter, weight, ticket ,label\n\n\"17.5-20 mm\", 10.43 g,\"ARK 16/432\",1\n,,,\n"})
    void columnsMayStandInAnyOrderAndBePartedInThreeWays(String text) throws IOException {
        MeasurementSheet.Sheet sheet = read(text, Convention.UNDECLARED);
        assertEquals(List.of(), sheet.findings().all());
        assertEquals(List.of("1 [ark-002] 10.43 g, 17.5-20 mm"), sheet.coins().stream().map(MeasurementSheetTest::shown).toList());
    }

    @Test
    void bareFiguresStandInTheUnitsOfTheConvention() throws IOException {
        MeasurementSheet.Sheet sheet = read("label,weight,axis\n1,3.87,6\n", demo.conventions().get("bench").value());
        assertEquals(List.of(), sheet.findings().all());
        assertEquals(List.of(Kind.WEIGHT, Kind.AXIS), List.copyOf(sheet.coins().get(0).measured().readings().keySet()));
    }

    /** Line and column are those of the cell, and within it of what is wrong. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "''                                              | sheet.csv sheet-not-a-table",
            "1,3.87 g                                        | sheet.csv:1:1 sheet-not-a-table; sheet.csv:1:1 sheet-unknown-column; sheet.csv:1:3 sheet-unknown-column",
            "label,weight~1,\"3.87 g                         | sheet.csv sheet-not-a-table",
            "label,wieght,axis~1,3.87 g,6 h                  | sheet.csv:1:7 sheet-unknown-column",
            "label,ticket,weight~1,ark-0o2,3.87 g            | sheet.csv:2:3 sheet-unknown-ticket",
            "label,weight~1,                                 | sheet.csv:2:1 sheet-row-without-figure",
            "label,weight~1,3.87 g~1,4.02 g                  | sheet.csv:3:1 sheet-label-twice",
            "label,weight~\"Tray ä, left\", 3.87 gx          | sheet.csv:2:22 unknown-unit",
            "label,weight~1,3.87                             | sheet.csv:2:3 figure-without-unit"})
    void whatIsWrongIsSaidAtItsPlace(String text, String expected) throws IOException {
        assertEquals(expected, faults(text.replace('~', '\n')));
    }
}
