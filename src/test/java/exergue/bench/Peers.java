package exergue.bench;

import exergue.Exergue;
import exergue.Progress;
import exergue.files.FolderTree;
import exergue.typeset.Setting;
import exergue.typeset.Stamp;
import exergue.typeset.TemplatePage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The same book for other programs to print: its words as plain paragraphs, and the very page our templates make. */
final class Peers {

    private static final Path FONTS = Path.of("src", "main", "resources", "exergue", "fonts").toAbsolutePath();

    private Peers() { }

    static void write(Path source, Path book, Path folder) throws IOException {
        Files.createDirectories(folder);
        List<String> lines = PlainText.of(book.resolve("catalogue.pdf"));
        Files.writeString(folder.resolve("plain-text.html"), PlainText.html(lines, face()));
        Files.writeString(folder.resolve("plain-text.typ"), PlainText.typst(lines));
        Files.writeString(folder.resolve("page.html"), page(source));
    }

    private static String page(Path source) throws IOException {
        FolderTree tree = new FolderTree(source);
        Exergue.Checked checked = Exergue.check(tree, Progress.SILENT);
        Setting setting = Setting.of(checked.catalogue().orElseThrow(), tree, () -> new Stamp("0".repeat(64)),
                (step, done, of) -> { });
        return TemplatePage.of(checked.book().orElseThrow(), setting, face());
    }

    private static String face() {
        return face("Regular", 400, "normal") + face("Italic", 400, "italic") + face("Bold", 700, "normal")
                + face("BoldItalic", 700, "italic");
    }

    private static String face(String file, int weight, String style) {
        return "@font-face{font-family:\"Gentium Book Plus\";font-weight:" + weight + ";font-style:" + style + ";src:url("
                + FONTS.resolve("GentiumBookPlus-" + file + ".ttf").toUri() + ")}\n";
    }
}
