package exergue.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import exergue.Golden;
import exergue.edition.DataRow;
import exergue.edition.DataRow.Figure;
import exergue.measure.Kind;
import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** Rows of data out, and read back by other programs' rules. */
class ExchangeTest {

    private static final DataRow PLAIN = new DataRow("lk-1", "1", "t-1", "lakeia", Optional.of("kallor"), "drachm",
            "silver", new DataRow.Struck(Optional.of(new DataRow.Dated("-0309~/-0304~", "c. 310–305 BC")),
                    Optional.of("year 35 (278/7 BC)"), Optional.of("ΒΑΣΙ[ΛΕ]ΩΣ"), Optional.of("ΛΥ, ΚΑ")), List.of(
                    new Figure(Kind.WEIGHT, "read", Optional.empty(), Optional.of("old"), "59.7 gr",
                            List.of(new BigDecimal("3.868487427")), "g", "3.87 g"),
                    new Figure(Kind.DIAMETER, "read", Optional.empty(), Optional.of("bench"), "18 x 17 mm",
                            List.of(new BigDecimal("18"), new BigDecimal("17")), "mm", "18 × 17 mm"),
                    new Figure(Kind.AXIS, "missing", Optional.of("worn, \"flat\""), Optional.of("bench"),
                            "missing: worn, \"flat\"", List.of(), "", "–")),
            Optional.of("52 (51–54) per cent gold"), List.of(
                    new DataRow.Other("old", Kind.DIAMETER, "0.70 in", List.of(new BigDecimal("17.78")), "mm")),
            "3.87 g, 18 × 17 mm, –", List.of("broken", "pierced"), false, Optional.of("Cab."), Optional.of("the lake"),
            Optional.of("xii"));
    private static final DataRow BARE = new DataRow("lk-2", "2", "t-1", "lakeia", Optional.empty(), "drachm", "silver",
            new DataRow.Struck(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()),
            List.of(new Figure(Kind.WEIGHT, "missing", Optional.empty(), Optional.empty(), "", List.of(), "", "–"),
                    new Figure(Kind.DIAMETER, "missing", Optional.empty(), Optional.empty(), "", List.of(), "", "–"),
                    new Figure(Kind.AXIS, "read", Optional.empty(), Optional.of("bench"), "ΒΑΣ\nline",
                            List.of(new BigDecimal("1E+1")), "h", "10 h")),
            Optional.empty(), List.of(), "–, –, 10 h", List.of(), false, Optional.empty(), Optional.empty(), Optional.empty());
    private static final List<DataRow> ROWS = List.of(PLAIN, BARE);

    @Test
    void bothTextsAreAsApproved() {
        Golden.check(Path.of("src/test/resources/golden/exchange/two-coins/catalogue.json"), CatalogueJson.of(ROWS));
        Golden.check(Path.of("src/test/resources/golden/exchange/two-coins/catalogue.csv"), CatalogueCsv.of(ROWS));
    }

    @Test
    void valuesInJsonAreExactNumbers() throws IOException {
        JsonNode coins = new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                .readTree(CatalogueJson.of(ROWS)).get("coins");
        assertEquals(new BigDecimal("3.868487427"), coins.at("/0/weight/values/0").decimalValue());
        assertEquals(10, coins.at("/1/axis/values/0").intValue());
        assertEquals("worn, \"flat\"", coins.at("/0/axis/why").asText());
        assertEquals(false, coins.get(1).has("page"));
    }

    @Test
    void theTableReadsBackCellByCell() throws IOException {
        List<CSVRecord> table = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get()
                .parse(new StringReader(CatalogueCsv.of(ROWS))).getRecords();
        assertEquals("-0309~/-0304~", table.get(0).get("date-edtf"));
        assertEquals("ΛΥ, ΚΑ", table.get(0).get("reverse-legend"));
        assertEquals("3.868487427", table.get(0).get("weight-g"));
        assertEquals("17", table.get(0).get("diameter-mm-second"));
        assertEquals("missing: worn, \"flat\"", table.get(0).get("axis-recorded"));
        assertEquals("ΒΑΣ\nline", table.get(1).get("axis-recorded"));
        assertEquals("10", table.get(1).get("axis-h"));
        assertEquals("no", table.get(1).get("weight-counts"));
    }

    @Test
    void linesOfTheTableEndAsItsStandardSays() { // RFC 4180, section 2, rule 1
        assertEquals(2 + 1, CatalogueCsv.of(ROWS).split("\r\n").length);
    }

    @Test
    void noCoinsAreStillATable() {
        assertEquals(1, CatalogueCsv.of(List.of()).split("\r\n").length);
    }
}
