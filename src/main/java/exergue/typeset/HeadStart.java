package exergue.typeset;

import exergue.typeset.Faces.Style;
import java.io.IOException;
import java.io.OutputStream;
import java.util.concurrent.ForkJoinPool;
import javax.xml.transform.TransformerException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.xmpbox.XMPMetadata;
import org.apache.xmpbox.xml.XmpSerializer;

/**
 * Gets ready beside other work what every book needs whatever is in it. Nothing depends on it: what is not ready when it
 * is asked for is made then. Should it fail, nobody hears of it here: it fails again where it is needed.
 */
public final class HeadStart {

    private HeadStart() { }

    /** Parses the faces, while the source is being read. Returns at once. */
    public static void faces() {
        ForkJoinPool.commonPool().submit(() -> {
            for (Style style : Style.values()) {
                Faces.has(style, ' ');
            }
        });
    }

    /** Writes a file of one blank page to nowhere, while the pages are laid out. Returns at once. */
    public static void writing() {
        ForkJoinPool.commonPool().submit(HeadStart::writeNothing);
    }

    private static Void writeNothing() throws IOException, TransformerException {
        Quiet.please();
        try (PDDocument blank = new PDDocument()) {
            PDPage page = new PDPage();
            blank.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(blank, page)) {
                content.saveGraphicsState();
                content.restoreGraphicsState();
            }
            XMPMetadata about = XMPMetadata.createXMPMetadata();
            about.createAndAddDublinCoreSchema();
            about.createAndAddPDFAIdentificationSchema();
            new XmpSerializer().serialize(about, OutputStream.nullOutputStream(), true);
            blank.save(OutputStream.nullOutputStream());
        }
        return null;
    }
}
