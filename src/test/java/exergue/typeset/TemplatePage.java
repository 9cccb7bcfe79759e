package exergue.typeset;

import exergue.edition.Book;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** The page that the templates make of a book, with its style sheet in it: for other programs to print. */
public final class TemplatePage {

    private TemplatePage() { }

    /** @param face CSS that says where the book's face is found */
    public static String of(Book book, Setting setting, String face) throws IOException {
        TemplateFiles files = new TemplateFiles(setting.source(), setting.templates());
        Map<String, Object> values = new BookValues(book, setting, new FootOfPage(), finding -> { }).all();
        values.put("blankBeforeBody", false);
        String page = new Templates(files, finding -> { }).fill("book.ftlh", values).orElseThrow();
        String style = new String(files.bytes("page.css").orElseThrow(), StandardCharsets.UTF_8);
        String link = "<link rel=\"stylesheet\" type=\"text/css\" href=\"page.css\"/>";
        if (!page.contains(link)) {
            throw new IllegalStateException("the page has another link to its style sheet than " + link);
        }
        return page.replace(link, "<meta charset=\"utf-8\"/><style>" + face + style + "</style>");
    }
}
