package exergue.review.content;

import exergue.model.Inline;
import exergue.model.Prose;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Prose as text with its marks, a block at a time, so that a change of mark is a change too. */
final class PlainText {

    private PlainText() { }

    /** One text for each block; a list and a quotation have one for each of theirs, a table one for each row. */
    static List<String> blocks(List<Prose> blocks) {
        List<String> texts = new ArrayList<>();
        blocks.forEach(block -> add(block, "", texts));
        return texts;
    }

    private static void add(Prose block, String before, List<String> into) {
        if (block instanceof Prose.Paragraph paragraph) {
            into.add(before + line(paragraph.runs()));
        } else if (block instanceof Prose.Heading heading) {
            into.add(before + "#".repeat(heading.level()) + " " + line(heading.runs()));
        } else if (block instanceof Prose.Quotation quotation) {
            quotation.blocks().forEach(inside -> add(inside, before + "> ", into));
        } else if (block instanceof Prose.Items items) {
            items.items().forEach(item -> item.forEach(inside -> add(inside, before + (items.numbered() ? "# " : "- "), into)));
        } else if (block instanceof Prose.Table table) {
            table.caption().ifPresent(caption -> into.add(before + RecordText.of(caption)));
            into.add(before + row(table.head()));
            table.rows().forEach(row -> into.add(before + row(row)));
        } else if (block instanceof Prose.Rule) {
            into.add(before + "* * *");
        } else {
            into.add(before + RecordText.of(block));
        }
    }

    private static String row(List<List<Inline>> cells) {
        return cells.stream().map(PlainText::line).collect(Collectors.joining(" | "));
    }

    static String line(List<Inline> runs) {
        return runs.stream().map(PlainText::run).collect(Collectors.joining());
    }

    private static String run(Inline run) {
        if (run instanceof Inline.Words words) {
            return words.text();
        } else if (run instanceof Inline.Emphasis emphasis) {
            return "*" + line(emphasis.runs()) + "*";
        } else if (run instanceof Inline.Strong strong) {
            return "**" + line(strong.runs()) + "**";
        } else if (run instanceof Inline.Link link) {
            return line(link.runs()) + " <" + link.address() + ">";
        } else if (run instanceof Inline.CrossReference reference) {
            String locator = reference.locator().isEmpty() ? "" : " " + reference.locator();
            return "[" + reference.kind() + ":" + reference.id() + locator + "]";
        } else if (run instanceof Inline.Footnote note) {
            return " [note: " + line(note.runs()) + "]";
        }
        return run instanceof Inline.LineBreak ? " / " : RecordText.of(run);
    }
}
