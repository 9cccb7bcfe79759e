package exergue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.files.FolderTree;
import exergue.files.MemoryTree;
import exergue.files.Tree;
import exergue.model.Language;
import exergue.model.TemplateSet;
import exergue.typeset.VeraPdf;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** The demo catalogue in every set of templates and every language: without a finding, and to the standards. */
class SetsTest {

    private static final Path DEMO = Path.of("catalogue-src");
    private static final BigDecimal PIXELS_PER_MM = new BigDecimal("16");
    private static final int MOST_BYTES = 25_000;

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

    /** The pictures are drawn at 16 pixels to the millimetre; the width that a coin's file gives must say the same. */
    @Test
    void everyPhotographIsAsWideAsItsCoinSays() throws IOException {
        Pattern width = Pattern.compile("(?m)^  width: ([0-9.]+) mm$");
        Pattern path = Pattern.compile("(?m)^  (?:obverse|reverse): (photographs/.*)$");
        List<String> wrong = new ArrayList<>();
        int pictures = 0;
        Tree demo = new FolderTree(DEMO);
        for (String file : demo.files()) {
            String text = file.startsWith("coins/") ? new String(demo.read(file), StandardCharsets.UTF_8) : "";
            Matcher said = width.matcher(text);
            Matcher picture = path.matcher(text);
            while (said.find(0) && picture.find()) {
                pictures++;
                byte[] bytes = demo.read(picture.group(1));
                BufferedImage seen = ImageIO.read(new ByteArrayInputStream(bytes));
                BigDecimal pixels = new BigDecimal(said.group(1)).multiply(PIXELS_PER_MM);
                if (pixels.compareTo(new BigDecimal(seen.getWidth())) != 0 || bytes.length > MOST_BYTES) {
                    wrong.add(file + ": " + seen.getWidth() + " pixels, " + bytes.length + " bytes");
                }
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(pictures >= 40, pictures + " pictures");
    }
}
