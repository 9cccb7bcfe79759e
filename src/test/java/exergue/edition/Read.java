package exergue.edition;

import exergue.model.Catalogue;
import exergue.model.Inline;
import exergue.model.Prose;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What tests look at in a finished book. */
final class Read {

    private Read() { }

    static Book book(Catalogue catalogue) {
        return Editor.edit(catalogue, Map.of(), PageMap.UNKNOWN).book();
    }

    static List<EntryBlock> blocks(Catalogue catalogue) {
        return book(catalogue).body().stream().filter(Part.Entries.class::isInstance)
                .flatMap(part -> ((Part.Entries) part).blocks().stream()).toList();
    }

    static List<EntryBlock.Entry> entries(Catalogue catalogue) {
        return blocks(catalogue).stream().filter(EntryBlock.Entry.class::isInstance)
                .map(EntryBlock.Entry.class::cast).toList();
    }

    static List<Specimen> specimens(Catalogue catalogue) {
        return entries(catalogue).stream().flatMap(entry -> entry.specimens().stream()).toList();
    }

    static String line(Catalogue catalogue) {
        return specimens(catalogue).get(0).line();
    }

    /** The methods statement: a line a sentence, a blank line between paragraphs, headings and tables as in Markdown. */
    static String methods(Catalogue catalogue) {
        Part.Text methods = (Part.Text) book(catalogue).body().get(0);
        return text(methods);
    }

    static String text(Part.Text part) {
        return part.blocks().stream().map(Read::shown).collect(Collectors.joining("\n\n")) + "\n";
    }

    private static String shown(Prose block) {
        if (block instanceof Prose.Heading heading) {
            return "#".repeat(heading.level()) + " " + Inline.plain(heading.runs());
        }
        if (block instanceof Prose.Items items) {
            return items.items().stream().map(item -> "- " + shown(item.get(0))).collect(Collectors.joining("\n"));
        }
        if (block instanceof Prose.Table table) {
            String caption = table.caption().map(its -> its.label().map(label -> label.words() + " | ").orElse("") + Inline.plain(its.runs()) + "\n")
                    .orElse("");
            return caption + Stream.concat(Stream.of(table.head()), table.rows().stream())
                    .map(row -> row.stream().map(Inline::plain).collect(Collectors.joining(" | ")))
                    .collect(Collectors.joining("\n"));
        }
        return shown(((Prose.Paragraph) block).runs()).replaceAll("(?<=[a-z)0-9h”’]\\.) (?=\\p{Lu})", "\n");
    }

    /** Italic in asterisks, bold in two. */
    static String marked(List<Inline> runs) {
        return runs.stream().map(run -> run instanceof Inline.Strong strong ? "**" + Inline.plain(strong.runs()) + "**"
                : shown(List.of(run))).collect(Collectors.joining());
    }

    private static String shown(List<Inline> runs) {
        return runs.stream().map(run -> run instanceof Inline.Emphasis emphasis
                ? "*" + Inline.plain(emphasis.runs()) + "*" : Inline.plain(List.of(run))).collect(Collectors.joining());
    }
}
