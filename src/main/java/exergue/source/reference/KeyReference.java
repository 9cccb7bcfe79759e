package exergue.source.reference;

import exergue.source.keys.FileKind;
import exergue.source.shape.Block;
import exergue.source.shape.Key;
import exergue.source.shape.ListOf;
import exergue.source.shape.MapOf;
import exergue.source.shape.Text;
import exergue.source.shape.TextOr;
import exergue.source.shape.Wanted;

/** docs/reference/keys.md: every key of every file, from the same descriptions that read them. */
public final class KeyReference {

    private final StringBuilder page = new StringBuilder();

    private KeyReference() { }

    /** The page in Markdown. */
    public static String markdown() {
        KeyReference reference = new KeyReference();
        reference.line("# Keys, file by file");
        reference.line("");
        reference.line("This page is written by the program from the descriptions it reads files with; change those, not this page.");
        reference.line("");
        reference.line("**words** are printed as they stand; a **line** is one line of Markdown (`*italic*`, `**bold**`); **prose** is "
                + "paragraphs of Markdown; an **id** has small letters, digits, hyphens and full stops; a **reading** is a figure with "
                + "its unit, or `\"missing: why\"`, `\"not applicable: why\"`, `\"illegible: why\"` in quotation marks. A key marked ● must be there.");
        FileKind.all().forEach(reference::file);
        return reference.page.toString();
    }

    private void line(String text) {
        page.append(text).append('\n');
    }

    private void file(FileKind<?> kind) {
        line("");
        line("## " + (kind.isFolder() ? kind.where() + "*id*.yaml" : kind.where()));
        line("");
        line(kind.about());
        line("");
        line("| Key | Value | Unless written | What it says | Example |");
        line("| --- | --- | --- | --- | --- |");
        keysOf(kind.wanted(), "");
    }

    private void keysOf(Wanted<?> wanted, String path) {
        if (wanted instanceof MapOf<?> map) {
            keysOf(map.member(), path + "*" + (map.ids().pattern().isEmpty() ? map.ids().name() : "id") + "*.");
        } else if (wanted instanceof ListOf<?> list) {
            keysOf(list.member(), path);
        } else if (wanted instanceof TextOr<?> either) {
            keysOf(either.block(), path);
        } else if (wanted instanceof Block<?> block) {
            for (Key<?> key : block.keys()) {
                row(key, path);
                keysOf(key.wanted(), path + key.name() + (key.wanted() instanceof ListOf<?> ? "[]." : "."));
            }
        }
    }

    private void row(Key<?> key, String path) {
        line("| " + path + "**" + key.name() + "**" + (key.must() ? " ●" : "") + " | " + cell(value(key.wanted())) + " | "
                + code(key.unlessWritten()) + " | " + cell(key.about()) + " | " + code(key.example()) + " |");
    }

    private static String value(Wanted<?> wanted) {
        if (wanted instanceof ListOf<?> list) {
            return list.member() instanceof Block<?> ? "list of blocks" : "list: " + value(list.member());
        }
        if (wanted instanceof Text<?> text) {
            return text.name();
        }
        if (wanted instanceof TextOr<?> either) {
            return either.name();
        }
        if (wanted instanceof MapOf<?> map) {
            if (!map.ids().pattern().isEmpty()) {
                return map.member() instanceof Text<?> text ? "under ids, " + text.name() : "blocks under ids";
            }
            return "under each " + map.ids().name() + ", " + value(map.member());
        }
        return "block";
    }

    private static String code(String text) {
        return text == null || text.isEmpty() ? "" : "`" + cell(text) + "`";
    }

    private static String cell(String text) {
        return text.replace("|", "\\|");
    }
}
