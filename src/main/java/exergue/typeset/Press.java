package exergue.typeset;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PageSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import exergue.typeset.Faces.Style;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.w3c.dom.Document;

/** The page engine, set up: our faces, our door to files, and nothing else. */
final class Press {

    /** Families a style sheet may name; all of them are our face, so that none can slip in unembedded. */
    private static final List<String> FAMILIES = List.of(Faces.FAMILY, "serif", "sans-serif", "monospace");

    private final PDDocument document;
    private final TreeResources resources;
    private final Remarks remarks;
    private final Map<Style, PDFont> loaded = new EnumMap<>(Style.class);

    Press(PDDocument document, TreeResources resources, Remarks remarks) {
        Quiet.please();
        this.document = document;
        this.resources = resources;
        this.remarks = remarks;
    }

    /** For the book itself: tagged, PDF/A-3u and PDF/UA. */
    PdfBoxRenderer forBook(Document xhtml) {
        PdfRendererBuilder builder = builder(xhtml);
        builder.usePdfUaAccessibility(true);
        builder.usePageSupplier(Grounds.pages());
        builder.useColorProfile(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
        return builder.buildPdfRenderer();
    }

    /** For pages to look at: neither tagged nor for keeping. */
    PdfBoxRenderer forLooking(Document xhtml) {
        return over(xhtml, null);
    }

    /** For what is printed over pages that are there already. */
    PdfBoxRenderer over(Document xhtml, PageSupplier pages) {
        PdfRendererBuilder builder = builder(xhtml);
        builder.usePageSupplier(pages);
        return builder.buildPdfRenderer();
    }

    private PdfRendererBuilder builder(Document xhtml) {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.usePDDocument(document);
        builder.withW3cDocument(xhtml, TreeResources.TEMPLATE + ":/book.ftlh");
        builder.withProducer("Exergue");
        builder.usePdfAConformance(PdfAConformance.PDFA_3_U); // else the engine reads fourteen faces that may not be used
        builder.useUriResolver((base, address) -> TreeResources.resolve(base, address).orElseGet(() -> {
            remarks.refused(address);
            return null;
        }));
        builder.useProtocolsStreamImplementation(resources, TreeResources.TREE, TreeResources.TEMPLATE);
        for (ExternalResourceControlPriority moment : ExternalResourceControlPriority.values()) {
            builder.useExternalResourceAccessControl((address, type) -> remarks.allowed(address), moment);
        }
        builder.useUnicodeLineBreaker(new LineBreaks());
        builder.withDiagnosticConsumer(remarks::take);
        for (String family : FAMILIES) {
            for (Style style : Style.values()) {
                builder.useFont(new Supplier(this, style), family, style.weight,
                        style.italic ? FontStyle.ITALIC : FontStyle.NORMAL, true);
            }
        }
        if (xhtml.getElementsByTagName("svg").getLength() > 0) {
            useDrawings(builder);
        }
        return builder;
    }

    /** Charts are drawn with the book's face, which has to be given again; nothing of that is loaded for books without charts. */
    private static void useDrawings(PdfRendererBuilder builder) {
        builder.useSVGDrawer(new BatikSVGDrawer(BatikSVGDrawer.SvgScriptMode.SECURE, BatikSVGDrawer.SvgExternalResourceMode.SECURE));
        for (Style style : List.of(Style.REGULAR, Style.ITALIC)) {
            builder.useFont(() -> Faces.bytes(style), Faces.FAMILY, style.weight, style.italic ? FontStyle.ITALIC : FontStyle.NORMAL,
                    false, EnumSet.of(FSFontUseCase.SVG));
        }
    }

    private PDFont load(Style style) {
        return loaded.computeIfAbsent(style, wanted -> {
            try {
                return PDType0Font.load(document, Faces.of(wanted), true);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    /** One font a document, shared by the book and its running heads, embedded once. */
    private static final class Supplier extends PDFontSupplier {

        private final Press press;
        private final Style style;

        Supplier(Press press, Style style) {
            super(null);
            this.press = press;
            this.style = style;
        }

        @Override
        public PDFont supply() {
            return press.load(style);
        }
    }
}
