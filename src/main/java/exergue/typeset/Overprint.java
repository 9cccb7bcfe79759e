package exergue.typeset;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.StreamSupport;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.w3c.dom.Document;

/**
 * Prints running heads and folios over pages that are there. They are marked as artifacts: a reader who listens to
 * the book does not hear them between two sentences.
 */
final class Overprint {

    private static final String OPEN = "Q\n/Artifact <</Type /Pagination>> BDC\nq\n";
    private static final String CLOSE = "Q\nEMC\n";

    private final PDDocument document;

    Overprint(PDDocument document) {
        this.document = document;
    }

    /** @return false if the heads did not come out as one sheet for each page */
    boolean print(Document sheets, Press press) throws IOException {
        List<PDPage> pages = StreamSupport.stream(document.getPages().spliterator(), false).toList();
        int[] asked = {0};
        try (PdfBoxRenderer heads = press.over(sheets, (doc, width, height, number, shadow) -> {
            asked[0]++;
            return number < pages.size() ? pages.get(number) : new PDPage();
        })) {
            heads.layout();
            if (heads.getRootBox().getLayer().getPages().size() != pages.size()) {
                return false;
            }
            for (PDPage page : pages) {
                enclose(page, "q\n", OPEN);
            }
            heads.createPDFWithoutClosing();
        }
        for (PDPage page : pages) {
            enclose(page, "", CLOSE);
        }
        return asked[0] == pages.size();
    }

    private void enclose(PDPage page, String before, String after) throws IOException {
        COSBase contents = page.getCOSObject().getDictionaryObject(COSName.CONTENTS);
        COSArray streams = new COSArray();
        if (!before.isEmpty()) {
            streams.add(stream(before));
        }
        if (contents instanceof COSArray several) {
            streams.addAll(several);
        } else if (contents != null) {
            streams.add(page.getCOSObject().getItem(COSName.CONTENTS));
        }
        streams.add(stream(after));
        page.getCOSObject().setItem(COSName.CONTENTS, streams);
    }

    private COSBase stream(String operators) throws IOException {
        PDStream stream = new PDStream(document);
        try (OutputStream out = stream.createOutputStream()) {
            out.write(operators.getBytes(StandardCharsets.US_ASCII));
        }
        return stream.getCOSObject();
    }
}
