package exergue.review.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.Golden;
import exergue.finding.Findings;
import exergue.review.Collation;
import exergue.review.SmallCatalogue;
import exergue.typeset.SideBySide;
import exergue.typeset.SideBySideSetter;
import exergue.typeset.VeraPdf;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** The proof of changes as data and as pages. */
class ProofSheetTest {

    private static final SmallCatalogue BEFORE = new SmallCatalogue();
    private static final SmallCatalogue AFTER = BEFORE.with("coins/lk-1.yaml", "3.78 g", "3.87 g")
            .withMore("coins/lk-1.yaml", "note: Worn & struck twice, 3 < 4.\n")
            .with("types/owl.yaml", "Owl standing left", "Owl and olive spray standing left")
            .without("coins/lk-3.yaml").with("coins/lk-9.yaml", BEFORE.text("coins/ma-1.yaml").replace("ma-1", "lk-9").replace("A 7", "A 9")
                    .replace("8.01", "8.20").replace("7 h", "3 h").replace("O9", "O8").replace("22 mm", "23 mm"))
            .with("chapters/history.md", "another hand", "a finer hand")
            .with("catalogue.yaml", "chapters/history.md]", "chapters/history.md, chapters/law.md]")
            .with("chapters/law.md", "# Law\n\nWhoever finds a coin says so.\n\nThe law is old.\n")
            .with("find-spots.yaml", "third dune", "fourth dune").with("collections.yaml", "sign: Cab.", "sign: Cab");

    @Test
    void changedEntriesStandBesideWhatTheyWere() throws IOException {
        Golden.check(Path.of("src/test/resources/golden/review/proof.txt"), text(proof()));
    }

    @ParameterizedTest
    @EnumSource(value = PDFAFlavour.class, names = {"PDFA_3_U", "PDFUA_1"})
    void thePagesKeepTheStandards(PDFAFlavour flavour) throws Exception {
        assertEquals(List.of(), VeraPdf.failures(pdf(), flavour));
    }

    @Test
    void theSignsAreOnThePages() throws IOException {
        try (PDDocument pages = Loader.loadPDF(pdf())) {
            String text = new PDFTextStripper().getText(pages);
            assertTrue(text.contains("‸3.87") && text.contains("₰"), text);
            assertTrue(text.contains("Worn & struck twice, 3 < 4"), text);
            assertFalse(text.contains("#") || text.contains("third dune") || text.contains("fourth dune"), text);
        }
    }

    @Test
    void theSameChangesGiveTheSameBytes() throws IOException {
        assertArrayEquals(pdf(), pdf());
    }

    private static byte[] pdf() throws IOException {
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        assertEquals(Findings.none().all(), SideBySideSetter.write(proof(), pdf).all());
        return pdf.toByteArray();
    }

    private static SideBySide proof() throws IOException {
        Collation.State before = Collation.State.read(BEFORE.tree());
        Collation.State after = Collation.State.read(AFTER.tree());
        return ProofSheet.of(Collation.of(before, after), before.catalogue().orElseThrow(), after.catalogue().orElseThrow(),
                List.of("main", "editor"), "Much has changed.");
    }

    private static String text(SideBySide proof) {
        StringBuilder text = new StringBuilder(proof.title() + "\n" + proof.before() + " → " + proof.after() + "\n");
        proof.consequences().forEach(sentence -> text.append("* ").append(sentence).append('\n'));
        for (SideBySide.Section section : proof.sections()) {
            text.append("\n== ").append(section.heading()).append('\n');
            for (SideBySide.Entry entry : section.entries()) {
                text.append('\n').append(entry.heading()).append('\n');
                entry.remarks().forEach(remark -> text.append("  * ").append(remark).append('\n'));
                entry.rows().forEach(row -> text.append("  ").append(row.label()).append(": ").append(runs(row.before())).append(" || ")
                        .append(runs(row.after())).append('\n'));
            }
        }
        return text.toString();
    }

    private static String runs(List<SideBySide.Run> runs) {
        return runs.stream().map(run -> switch (run.mark()) {
            case KEPT -> run.text();
            case DELETED -> "-" + run.text() + "-";
            case INSERTED -> "+" + run.text() + "+";
        }).collect(Collectors.joining(" "));
    }
}
