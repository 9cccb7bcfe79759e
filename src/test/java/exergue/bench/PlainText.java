package exergue.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** The words of a book without its layout, a paragraph for each line, as source for other programs. */
final class PlainText {

    private PlainText() { }

    static List<String> of(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(document).lines().filter(line -> !line.isBlank()).toList();
        }
    }

    /** Page, face and size as in the book. */
    static String html(List<String> lines, String face) {
        StringBuilder page = new StringBuilder("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\">"
                + "<title>The same text</title>\n<style>" + face + "@page{size:210mm 280mm;margin:24mm 26mm 30mm 26mm}"
                + "body{margin:0;font:9.5pt/12.5pt \"Gentium Book Plus\"}p{margin:0}</style></head><body>\n");
        lines.forEach(line -> page.append("<p>").append(line.replace("&", "&amp;").replace("<", "&lt;"))
                .append("</p>\n"));
        return page.append("</body></html>\n").toString();
    }

    static String typst(List<String> lines) {
        StringBuilder page = new StringBuilder("""
                #set document(title: "The same text")
                #set page(width: 210mm, height: 280mm, margin: (top: 24mm, bottom: 30mm, x: 26mm))
                #set text(font: "Gentium Book Plus", size: 9.5pt, lang: "en", top-edge: 1em, bottom-edge: 0em)
                #set par(leading: 3pt, spacing: 3pt)
                """);
        lines.forEach(line -> page.append("#\"").append(line.replace("\\", "\\\\").replace("\"", "\\\""))
                .append("\"\n\n"));
        return page.toString();
    }
}
