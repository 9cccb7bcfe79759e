package exergue;

import exergue.model.Catalogue;
import exergue.model.Written;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** Exact find-spots that a catalogue keeps to itself, and where in a file they may have slipped in. */
public final class Secrets {

    private Secrets() { }

    /** What must not be found in anything that is made of this catalogue. */
    public static List<String> of(Catalogue catalogue) {
        return catalogue.findSpots().values().stream().filter(spot -> !spot.mayPrint())
                .flatMap(spot -> spot.exact().stream()).map(Written::value).toList();
    }

    /** Those secrets that stand in the bytes, as text in any of the usual encodings. */
    public static List<String> in(byte[] bytes, List<String> secrets) {
        List<String> found = new ArrayList<>();
        for (Charset charset : List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16BE, StandardCharsets.UTF_16LE)) {
            String text = squeezed(new String(bytes, charset));
            secrets.stream().filter(secret -> text.contains(squeezed(secret))).forEach(found::add);
        }
        return found;
    }

    /** Those that stand anywhere in a PDF: raw, in any stream once unpacked, or on its pages as they read. */
    public static List<String> inPdf(byte[] pdf, List<String> secrets) throws IOException {
        List<String> found = new ArrayList<>(in(pdf, secrets));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            found.addAll(in(new PDFTextStripper().getText(document).getBytes(StandardCharsets.UTF_8), secrets));
            StringBuilder strings = new StringBuilder();
            for (COSObjectKey key : document.getDocument().getXrefTable().keySet()) {
                COSBase object = document.getDocument().getObjectFromPool(key).getObject();
                if (object instanceof COSStream stream) {
                    try (InputStream unpacked = stream.createInputStream()) {
                        found.addAll(in(unpacked.readAllBytes(), secrets));
                    }
                }
                collect(object, strings);
            }
            found.addAll(in(strings.toString().getBytes(StandardCharsets.UTF_8), secrets));
        }
        return found;
    }

    /** Text of one object; what it refers to is an object of its own. */
    private static void collect(COSBase object, StringBuilder into) {
        if (object instanceof COSString string) {
            into.append(string.getString()).append('\n');
        } else if (object instanceof COSArray array) {
            array.forEach(item -> collect(item, into));
        } else if (object instanceof COSDictionary dictionary) {
            dictionary.getValues().forEach(item -> collect(item, into));
        }
    }

    private static String squeezed(String text) {
        return text.replaceAll("\\s+", "");
    }
}
