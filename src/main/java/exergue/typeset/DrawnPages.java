package exergue.typeset;

import exergue.photo.PngFile;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * The pages of a PDF as pictures for a screen, drawn when they are asked for. One page is drawn at a time, whoever asks.
 * Close it when done; then there is nothing to see any more.
 */
public final class DrawnPages implements AutoCloseable {

    /** What a piece of a line says and where it stands. @param left in ten-thousandths of the sheet, like the others */
    public record Line(String text, int left, int top, int right, int bottom) { }

    /** Somebody wants to see pages that have been closed. */
    public static final class LaidAside extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    private final PDDocument document;
    private final PDFRenderer renderer;
    private boolean closed;

    private DrawnPages(PDDocument document) {
        this.document = document;
        this.renderer = new PDFRenderer(document);
    }

    /** @throws IOException if this is no PDF */
    public static DrawnPages of(byte[] pdf) throws IOException {
        Quiet.please();
        return new DrawnPages(Loader.loadPDF(pdf));
    }

    public int count() {
        return document.getNumberOfPages();
    }

    /** Width and height of the first page, in points. */
    public List<Integer> sheet() {
        PDRectangle box = document.getPage(0).getCropBox();
        return List.of(Math.round(box.getWidth()), Math.round(box.getHeight()));
    }

    /**
     * A page as a PNG file.
     *
     * @param page from 0
     * @param dpi  points of the screen for an inch of the page
     * @throws IOException if the page cannot be drawn
     * @throws LaidAside   once closed
     */
    public synchronized byte[] png(int page, int dpi) throws IOException {
        failIfClosed();
        return PngFile.of(renderer.renderImageWithDPI(page, dpi, ImageType.RGB));
    }

    /** The lines of a page, in the order they are read in. @param page from 0 @throws IOException if it cannot be read */
    public synchronized List<Line> lines(int page) throws IOException {
        failIfClosed();
        List<Line> lines = new ArrayList<>();
        PageLines.read(document, page, lines::add);
        return List.copyOf(lines);
    }

    private void failIfClosed() {
        if (closed) {
            throw new LaidAside();
        }
    }

    @Override
    public synchronized void close() throws IOException {
        closed = true;
        document.close();
    }
}
