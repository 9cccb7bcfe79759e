package exergue;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.Exergue.Checked;
import exergue.Exergue.Publication;
import exergue.exchange.BookData;
import exergue.exchange.CatalogueCsv;
import exergue.exchange.CatalogueJson;
import exergue.files.FolderTree;
import exergue.typeset.VeraPdf;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** The demo book carries its figures and the name of its source's state, and nothing that was to stay secret. */
class EnclosedTest {

    private static final Optional<String> COMMIT = Optional.of("4d5c0ffee".repeat(4) + "1234");

    private static Checked checked;
    private static Publication publication;
    private static byte[] pdf;

    @BeforeAll
    static void make() throws IOException {
        checked = TestDarkroom.checked(new FolderTree(Path.of("catalogue-src")));
        pdf = bytes(COMMIT);
    }

    private static byte[] bytes(Optional<String> commit) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        publication = Exergue.typeset(checked, BookData.enclosed(commit), Prints.only(out), Progress.SILENT).publication()
                .orElseThrow();
        return out.toByteArray();
    }

    @Test
    void theDataComeOutOfTheBookAsTheyStandBesideIt() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            Map<String, PDComplexFileSpecification> files = document.getDocumentCatalog().getNames()
                    .getEmbeddedFiles().getNames();
            assertEquals(List.of("catalogue.csv", "catalogue.json"), files.keySet().stream().sorted().toList());
            assertEquals(CatalogueJson.of(publication.rows(), COMMIT), text(files.get("catalogue.json")));
            assertEquals(CatalogueCsv.of(publication.rows()), text(files.get("catalogue.csv")));
            assertEquals("application/json", files.get("catalogue.json").getEmbeddedFileUnicode().getSubtype());
            COSArray associated = (COSArray) document.getDocumentCatalog().getCOSObject()
                    .getDictionaryObject(COSName.getPDFName("AF"));
            assertEquals(2, associated.size());
            for (int i = 0; i < associated.size(); i++) {
                assertEquals("Data", ((COSDictionary) associated.getObject(i)).getNameAsString("AFRelationship"));
            }
        }
    }

    private static String text(PDComplexFileSpecification file) throws IOException {
        return new String(file.getEmbeddedFileUnicode().toByteArray(), StandardCharsets.UTF_8);
    }

    @Test
    void theCommitStandsInTheMetadataAndInTheData() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String xmp = new String(document.getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8);
            assertTrue(xmp.contains("<dc:source>Commit " + COMMIT.get() + "</dc:source>"), xmp);
        }
        assertTrue(CatalogueJson.of(publication.rows(), COMMIT).contains("\"source-commit\": \"" + COMMIT.get() + "\""));
        assertFalse(CatalogueJson.of(publication.rows()).contains("source-commit"));
    }

    @Test
    void theSameSourceAtTheSameCommitGivesTheSameBytes() throws IOException {
        assertArrayEquals(pdf, bytes(COMMIT));
        assertNotEquals(pdf.length, bytes(Optional.empty()).length);
    }

    @Test
    void itKeepsTheStandards() throws Exception {
        assertEquals(List.of(), VeraPdf.failures(pdf, PDFAFlavour.PDFA_3_U));
        assertEquals(List.of(), VeraPdf.failures(pdf, PDFAFlavour.PDFUA_1));
    }

    @Test
    void noExactFindSpotIsAnywhereInIt() throws IOException {
        List<String> secrets = Secrets.of(checked.catalogue().orElseThrow());
        assertTrue(secrets.size() >= 5, secrets::toString);
        assertEquals(List.of(), Secrets.inPdf(pdf, secrets));
        assertEquals(List.of(), Secrets.in(CatalogueJson.of(publication.rows()).getBytes(StandardCharsets.UTF_8), secrets));
    }

    /** Without this the test above could pass because it cannot see. */
    @Test
    void whatIsInTheBookWouldBeSeen() throws IOException {
        String line = publication.rows().get(0).line();
        String title = checked.catalogue().orElseThrow().title().title().value();
        assertFalse(Secrets.inPdf(pdf, List.of(line)).isEmpty());
        assertFalse(Secrets.inPdf(pdf, List.of(title)).isEmpty());
        assertFalse(Secrets.inPdf(pdf, List.of("\"id\": \"" + publication.rows().get(0).id() + "\"")).isEmpty());
    }
}
