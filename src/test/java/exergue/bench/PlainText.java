package exergue.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** The words of a book without its layout, as one HTML file with a paragraph for each line. */
final class PlainText {

    private PlainText() { }

    static void write(Path pdf, Path html) throws IOException {
        StringBuilder page = new StringBuilder("<!DOCTYPE html>\n<html lang=\"en\"><meta charset=\"utf-8\">"
                + "<title>The same text</title>\n<style>@page{size:210mm 280mm} body{font-family:serif;font-size:10pt}"
                + "p{margin:0}</style>\n");
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            new PDFTextStripper().getText(document).lines().filter(line -> !line.isBlank())
                    .forEach(line -> page.append("<p>").append(line.replace("&", "&amp;").replace("<", "&lt;"))
                            .append("</p>\n"));
        }
        Files.writeString(html, page.append("</html>\n"));
    }
}
