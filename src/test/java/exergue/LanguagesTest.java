package exergue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.files.FolderTree;
import exergue.files.MemoryTree;
import exergue.files.Tree;
import exergue.model.BookWord;
import exergue.model.Language;
import exergue.typeset.VeraPdf;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** The catalogue that a beginner starts with, in each language: set without a finding, and in that language. */
class LanguagesTest {

    private static final String SOFT_HYPHEN = "\u00AD";

    @ParameterizedTest
    @EnumSource(Language.class)
    void theCatalogueIsSetInItsLanguage(Language language) throws Exception {
        byte[] pdf = pdf(tree(language));
        assertEquals(List.of(), VeraPdf.failures(pdf, PDFAFlavour.PDFA_3_U));
        assertEquals(List.of(), VeraPdf.failures(pdf, PDFAFlavour.PDFUA_1));
        String text = text(pdf);
        assertFalse(text.contains(SOFT_HYPHEN), "words come back without the places where they may be divided");
        assertTrue(text.contains(BookWord.METHODS.in(language)), text);
        assertTrue(text.replaceAll("-?\\s+", "").contains(said(language).replaceAll("\\s+", "")), text);
        boolean comma = text.matches("(?s).*\\d,\\d+\\u202Fg.*");
        assertEquals(language != Language.ENGLISH, comma, "decimal comma");
    }

    /** Words of the methods statement. */
    private static String said(Language language) {
        return switch (language) {
            case ENGLISH -> "Weights are printed to";
            case FRENCH -> "Les poids sont imprimés";
            case GERMAN -> "Gewichte sind in Gramm";
            case ITALIAN -> "I pesi sono stampati";
        };
    }

    private static byte[] pdf(Tree tree) throws IOException {
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        Exergue.Made made = Exergue.typeset(TestDarkroom.checked(tree), pdf, Progress.SILENT);
        assertEquals(List.of(), made.findings().all());
        return pdf.toByteArray();
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    private static Tree tree(Language language) throws IOException {
        FolderTree start = new FolderTree(Path.of("src/main/resources/exergue/start"));
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (String file : start.files()) {
            String text = new String(start.read(file), StandardCharsets.UTF_8);
            files.put(file, text.replaceAll("(?m)^language: en\\b", "language: " + language.code())
                    .getBytes(StandardCharsets.UTF_8));
        }
        return new MemoryTree(files);
    }
}
