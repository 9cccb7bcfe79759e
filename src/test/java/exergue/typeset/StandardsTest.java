package exergue.typeset;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.finding.Findings;
import java.io.ByteArrayOutputStream;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** The sample book against PDF/A-3u and PDF/UA-1, as veraPDF reads them. */
class StandardsTest {

    private static byte[] pdf;

    @BeforeAll
    static void set() throws Exception {
        pdf = bytes();
    }

    private static byte[] bytes() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Findings findings = Typesetter.typeset(SampleBook.of(24, 90), SampleBook.setting(), out).findings();
        assertEquals(List.of(), findings.all());
        return out.toByteArray();
    }

    @Test
    void passesPdfA3u() throws Exception {
        assertEquals(List.of(), VeraPdf.failures(pdf, PDFAFlavour.PDFA_3_U));
    }

    @Test
    void passesPdfUa1() throws Exception {
        assertEquals(List.of(), VeraPdf.failures(pdf, PDFAFlavour.PDFUA_1));
    }

    @Test
    void theSameBookGivesTheSameBytes() throws Exception {
        assertArrayEquals(pdf, bytes());
    }
}
