package exergue.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.edition.Book;
import exergue.edition.PageMap;
import exergue.edition.Part;
import exergue.files.FolderTree;
import exergue.finding.Findings;
import exergue.finding.Place;
import exergue.model.HouseStyle.Rows;
import exergue.model.Inline.Link;
import exergue.model.Inline.Words;
import exergue.model.Prose;
import exergue.model.TemplateChoice;
import exergue.model.TemplateSet;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A catalogue from a stranger cannot read outside its folder, call Java or bring the program down. */
class TrustTest {

    private static final String SECRET = "hidden";
    private static final String PAGE = "<html lang=\"en\"><head><title>t</title><meta name=\"subject\" content=\"s\"/>"
            + "%s</head><body><div class=\"sequence\"><p>%s</p></div></body></html>";

    @TempDir
    Path folder;
    private Path source;

    @BeforeEach
    void secretBesideTheSource() throws Exception {
        source = Files.createDirectories(folder.resolve("source/own"));
        Files.writeString(folder.resolve("secret.txt"), SECRET);
        Files.writeString(folder.resolve("secret.css"), "p { content: 'hidden' } @page { size: 10mm 10mm }");
    }

    private record Outcome(Findings findings, String text) { }

    private Outcome outcome(Book book) throws Exception {
        Setting setting = new Setting(new FolderTree(source.getParent()), new TemplateChoice(TemplateSet.CORPUS, Optional.of("own")), Rows.ALIGNED, Map.of(),
                () -> new Stamp("0".repeat(32)), pages -> { }, Progress.SILENT);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        TypesetBook set = Typesetter.typeset(book, setting, out);
        if (out.size() == 0) {
            assertTrue(set.findings().hasErrors());
            assertEquals(PageMap.UNKNOWN, set.pages());
            return new Outcome(set.findings(), "");
        }
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            return new Outcome(set.findings(), new PDFTextStripper().getText(document));
        }
    }

    private static Book small() {
        return new Book("en", SampleBook.title(), List.of(),
                List.of(new Part.Text("one", SampleBook.words("One"), SampleBook.prose(1))), List.of());
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "<#include \"../../secret.txt\">",
        "<#include \"/../secret.txt\">",
        "<#include \"file:///etc/passwd\">",
        "<#import \"http://localhost/x.ftl\" as x>",
        "${\"freemarker.template.utility.Execute\"?new()(\"id\")}",
        "${\"freemarker.template.utility.ObjectConstructor\"?new()(\"java.io.File\", \"/etc/passwd\")}",
        "${title?api.class.name}",
        "${title.class.protectionDomain}",
        "${body?first.class}",
        "<#assign x = title.getClass()>",
        "${nowhere}",
        "<#if>",
        "${.data_model.language.class}"})
    void aTemplateReachesNothingButItsValues(String hostile) throws Exception {
        Files.writeString(source.resolve("book.ftlh"), "<html>\n" + hostile + "\n</html>");
        Findings findings = outcome(small()).findings();
        assertEquals(List.of("own/book.ftlh:2"), findings.all().stream()
                .map(f -> f.place().file() + ":" + f.place().line()).toList());
        assertEquals("template-fault", findings.all().get(0).code().id());
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "<link rel=\"stylesheet\" href=\"../../secret.css\"/>",
        "<link rel=\"stylesheet\" href=\"../secret.css\"/>",
        "<link rel=\"stylesheet\" href=\"file:///etc/passwd\"/>",
        "<link rel=\"stylesheet\" href=\"http://localhost:9/x.css\"/>",
        "<link rel=\"stylesheet\" href=\"jar:file:/x.jar!/x.css\"/>",
        "<link rel=\"stylesheet\" href=\"tree://host/x.css\"/>",
        "<style>@import url(http://localhost:9/x.css);</style>",
        "<style>p { background: url(file:///etc/passwd) }</style>",
        "<style>@font-face { font-family: x; src: url(http://localhost:9/x.ttf) } p { font-family: x }</style>"})
    void aStyleSheetReachesNothingOutside(String hostile) throws Exception {
        Files.writeString(source.resolve("book.ftlh"), PAGE.formatted(hostile, "words"));
        Findings findings = outcome(small()).findings();
        assertTrue(findings.all().stream().anyMatch(f -> f.code().id().equals("outside-resource")),
                () -> "no finding for " + hostile + ": " + findings.all());
    }

    @ParameterizedTest
    @ValueSource(strings = {"../../secret.txt", "file:///etc/passwd", "http://localhost:9/x.png", "//localhost/x.png",
        "jar:file:/x.jar!/x.png", "data:image/png;base64,AAAA"})
    void aPictureInATemplateReachesNothingOutside(String address) throws Exception {
        Files.writeString(source.resolve("book.ftlh"),
                PAGE.formatted("", "<img alt=\"x\" src=\"" + address + "\"/>"));
        Findings findings = outcome(small()).findings();
        assertTrue(findings.hasErrors(), () -> address + ": " + findings.all());
    }

    @Test
    void aLinkOnTheDiskLeadsNowhere() throws Exception {
        Files.createSymbolicLink(source.resolve("page.css"), folder.resolve("secret.css"));
        assertEquals(List.of(), outcome(small()).findings().all());
    }

    @ParameterizedTest
    @ValueSource(strings = {"<p>open", "<p>&nbsp;</p>", "<br>", "<!DOCTYPE x [<!ENTITY e SYSTEM 'file:///etc/passwd'>]>",
        "</div></div></div>", "<p a=1/>"})
    void markupThatDoesNotCloseIsAFinding(String markup) throws Exception {
        Files.writeString(source.resolve("parts.ftlh"), Files.readString(Path.of("templates/shared/parts.ftlh"))
                .replace("<#macro heading part>", "<#macro heading part>" + markup));
        Findings findings = outcome(small()).findings();
        assertEquals(List.of("template-markup"), findings.all().stream().map(f -> f.code().id()).toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"<html/>", "<p>x</p>", "<html><body><tr><td/></tr></body></html>",
        "<html><head><title/></head><body><table><td>x</td></table></body></html>",
        "<html><head><style>p { width: calc(1 / 0) } } {{ @page</style></head><body><p>x</p></body></html>"})
    void strangeMarkupNeverBringsTheProgramDown(String markup) throws Exception {
        Files.writeString(source.resolve("book.ftlh"), markup);
        Outcome outcome = outcome(small());
        assertFalse(outcome.findings().isEmpty(), "at least the missing title is worth a remark");
    }

    @Test
    void whatTheEngineDoesNotUnderstandIsAFinding() throws Exception {
        Files.writeString(source.resolve("page.css"), Files.readString(Path.of("templates/shared/page.css"))
                + "p { line-hight: 13pt; color: purplish }");
        assertEquals(List.of("own/page.css page-engine-remark"), outcome(small()).findings().all().stream()
                .map(f -> f.place() + " " + f.code().id()).distinct().toList());
    }

    @Test
    void proseIsPrintedAndNeverObeyed() throws Exception {
        Place place = SampleBook.PLACE;
        String hostile = "<script>x</script> ${title} <#include 'x'> &amp; <img src=\"file:///etc/passwd\"/>";
        Book book = new Book("en", SampleBook.title(), List.of(), List.of(new Part.Text("one",
                SampleBook.words("A < B & C"), List.of(
                new Prose.Paragraph(List.of(new Words(hostile)), place),
                new Prose.Paragraph(List.of(new Link("javascript:alert(1)", List.of(new Words("press here")))), place)))),
                List.of());
        Outcome outcome = outcome(book);
        assertEquals(List.of(), outcome.findings().all());
        String even = outcome.text().replaceAll("\\s+", " ");
        assertTrue(even.contains(hostile), even);
        assertTrue(even.contains("A < B & C"), even);
        assertTrue(even.contains("press here"), even);
        assertFalse(even.contains("javascript"), even);
    }

    @ParameterizedTest
    @ValueSource(strings = {"../secret.txt", "/etc/passwd", "photographs/none.png", "a b.png"})
    void aPictureThatIsNotThereIsAFinding(String path) throws Exception {
        Book book = new Book("en", SampleBook.title(), List.of(), List.of(new Part.Text("one",
                SampleBook.words("One"), List.of(new Prose.Picture(path, "a coin", Optional.empty(), SampleBook.PLACE)))),
                List.of());
        Findings findings = outcome(book).findings();
        assertEquals(List.of("picture-missing"), findings.all().stream().map(f -> f.code().id()).toList());
        assertEquals(SampleBook.PLACE, findings.all().get(0).place());
    }

    @Test
    void aPictureThatIsNoneIsAFinding() throws Exception {
        Files.write(source.getParent().resolve("bad one.png"), "not a picture".getBytes(StandardCharsets.UTF_8));
        Book book = new Book("en", SampleBook.title(), List.of(), List.of(new Part.Text("one",
                SampleBook.words("One"), List.of(new Prose.Picture("bad one.png", "a coin", Optional.empty(),
                SampleBook.PLACE)))), List.of());
        Findings findings = outcome(book).findings();
        assertEquals(List.of("picture-unreadable bad one.png"), findings.all().stream()
                .map(f -> f.code().id() + " " + f.place().file()).distinct().toList());
    }
}
