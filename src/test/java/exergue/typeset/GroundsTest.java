package exergue.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.stream.StreamSupport;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;

class GroundsTest {

    @Test
    void theGroundsOfAPageShareOneEntryAmongItsProperties() throws IOException {
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        Typesetter.typeset(SampleBook.of(3, 12), SampleBook.setting(), pdf);
        try (PDDocument document = Loader.loadPDF(pdf.toByteArray())) {
            List<PDPage> pages = StreamSupport.stream(document.getPages().spliterator(), false).toList();
            assertTrue(pages.size() > 2);
            for (PDPage page : pages) {
                COSDictionary properties = page.getResources().getCOSObject().getCOSDictionary(COSName.PROPERTIES);
                assertEquals(Set.of(COSName.getPDFName("Ground")), properties.keySet());
                assertEquals("Layout", properties.getCOSDictionary(COSName.getPDFName("Ground"))
                        .getNameAsString(COSName.TYPE));
            }
        }
    }
}
