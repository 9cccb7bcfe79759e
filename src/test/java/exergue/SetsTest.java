package exergue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import exergue.files.FolderTree;
import exergue.files.MemoryTree;
import exergue.files.Tree;
import exergue.model.Language;
import exergue.model.TemplateSet;
import exergue.typeset.VeraPdf;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** The demo catalogue in every set of templates and every language: without a finding, and to the standards. */
class SetsTest {

    private static final Path DEMO = Path.of("catalogue-src");

    static Stream<Arguments> books() {
        return Stream.of(TemplateSet.values()).flatMap(set -> Stream.of(Language.values())
                .map(language -> Arguments.of(set, language)));
    }

    @ParameterizedTest
    @MethodSource("books")
    void theDemoIsSetWithoutAFindingAndToTheStandards(TemplateSet set, Language language) throws Exception {
        byte[] pdf = pdf(demo(set, language));
        assertEquals(List.of(), VeraPdf.failures(pdf, PDFAFlavour.PDFA_3_U));
        assertEquals(List.of(), VeraPdf.failures(pdf, PDFAFlavour.PDFUA_1));
    }

    private static byte[] pdf(Tree tree) throws IOException {
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        Exergue.Made made = Exergue.typeset(TestDarkroom.checked(tree), pdf, Progress.SILENT);
        assertEquals(List.of(), made.findings().all());
        return pdf.toByteArray();
    }

    private static Tree demo(TemplateSet set, Language language) throws IOException {
        Tree demo = new FolderTree(DEMO);
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (String file : demo.files()) {
            files.put(file, demo.read(file));
        }
        String own = new String(files.get("catalogue.yaml"), StandardCharsets.UTF_8)
                .replaceAll("(?m)^language: en\\b", "language: " + language.code());
        files.put("catalogue.yaml", (own + "template-set: " + set.word() + "\n").getBytes(StandardCharsets.UTF_8));
        return new MemoryTree(files);
    }
}
