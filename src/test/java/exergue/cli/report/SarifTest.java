package exergue.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import exergue.files.MemoryTree;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What SARIF 2.1.0 (OASIS standard, 27 March 2020) asks of a log; the sections are named beside each check. */
class SarifTest {

    private JsonNode log;
    private JsonNode run;

    @BeforeEach
    void read() throws Exception {
        log = new ObjectMapper().readTree(Format.SARIF.render(
                new Report(ReportTest.FINDINGS, MemoryTree.ofText(Map.of()), "catalogue-src"), Ink.PLAIN));
        run = log.get("runs").get(0);
    }

    /** The standard's own JSON Schema (OASIS, sarif-schema-2.1.0.json); formats are asserted too. */
    @Test
    void theSchemaOfTheStandardTakesTheLog() throws IOException {
        try (InputStream file = SarifTest.class.getResourceAsStream("/schema/sarif-schema-2.1.0.json")) {
            Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7)
                    .getSchema(new String(file.readAllBytes(), StandardCharsets.UTF_8), InputFormat.JSON);
            assertEquals(List.of(), schema.validate(log.toString(), InputFormat.JSON,
                    context -> context.executionConfig(config -> config.formatAssertionsEnabled(true))));
            assertFalse(schema.validate(log.toString().replace("ruleId", "rule"), InputFormat.JSON).isEmpty());
        }
    }

    @Test
    void theLogNamesItsVersionAndHoldsOneRun() { // 3.13
        assertEquals("2.1.0", log.get("version").asText());
        assertTrue(log.get("$schema").asText().endsWith("sarif-schema-2.1.0.json"));
        assertEquals(1, log.get("runs").size());
    }

    @Test
    void theRunNamesItsToolAndHowColumnsAreCounted() { // 3.14.6, 3.14.17, 3.19.8
        assertEquals("Exergue", run.at("/tool/driver/name").asText());
        assertEquals("unicodeCodePoints", run.get("columnKind").asText());
    }

    @Test
    void rulesHaveAnIdOnceAndTexts() { // 3.19.23, 3.49
        JsonNode rules = run.at("/tool/driver/rules");
        assertEquals(3, rules.size());
        for (JsonNode rule : rules) {
            assertTrue(rule.get("id").asText().matches("[a-z-]+"));
            assertFalse(rule.at("/shortDescription/text").asText().isEmpty());
            assertFalse(rule.at("/help/text").asText().isEmpty());
            assertTrue(Set.of("error", "warning", "note").contains(rule.at("/defaultConfiguration/level").asText()));
        }
    }

    @Test
    void everyResultPointsAtItsRuleAndAPlace() { // 3.27.5 to 3.27.12
        assertEquals(ReportTest.FINDINGS.all().size(), run.get("results").size());
        for (JsonNode result : run.get("results")) {
            JsonNode rule = run.at("/tool/driver/rules").get(result.get("ruleIndex").asInt());
            assertEquals(rule.get("id"), result.get("ruleId"));
            assertFalse(result.at("/message/text").asText().isEmpty());
            URI file = URI.create(result.at("/locations/0/physicalLocation/artifactLocation/uri").asText());
            assertTrue(file.getPath().startsWith("catalogue-src/"), file.toString());
        }
    }

    @Test
    void regionsCountFromOneAndEndAfterTheirLastColumn() { // 3.30.5 to 3.30.8
        JsonNode region = run.at("/results/0/locations/0/physicalLocation/region");
        assertEquals(3, region.get("startLine").asInt());
        assertEquals(2, region.get("startColumn").asInt());
        assertEquals(8, region.get("endColumn").asInt());
    }

    @Test
    void aFindingOfAWholeFileHasNoRegion() {
        JsonNode last = run.get("results").get(run.get("results").size() - 1);
        assertFalse(last.at("/locations/0/physicalLocation").has("region"));
        assertEquals("catalogue-src/odd%20n%C3%A4me%201.txt",
                last.at("/locations/0/physicalLocation/artifactLocation/uri").asText());
    }

    @Test
    void aSafeEditIsAFix() { // 3.55 to 3.57
        JsonNode change = run.at("/results/0/fixes/0/artifactChanges/0");
        assertEquals("catalogue-src/coins/lk-1.yaml", change.at("/artifactLocation/uri").asText());
        assertEquals("weight", change.at("/replacements/0/insertedContent/text").asText());
        assertEquals(8, change.at("/replacements/0/deletedRegion/endColumn").asInt());
    }
}
