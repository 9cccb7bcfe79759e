package exergue.source.markdown;

import exergue.model.Inline;
import exergue.model.Prose;
import java.util.ArrayList;
import java.util.List;

/** The levels of headings in a chapter: one title, and no level left out below it. */
final class Headings {

    private Headings() { }

    /** The blocks after the title; a second title becomes a section. */
    static List<Prose> inOrder(List<Prose> blocks, Manuscript manuscript) {
        List<Prose> ordered = new ArrayList<>();
        int level = 1;
        for (Prose block : blocks) {
            if (block instanceof Prose.Heading heading) {
                String words = Inline.plain(heading.runs());
                if (heading.level() == 1) {
                    manuscript.report(MarkdownCodes.SECOND_TITLE, heading.place(), "“" + words + "” is a second title of this chapter.",
                            "Write it with ##, or move what follows into a chapter of its own.");
                } else if (heading.level() > level + 1) {
                    manuscript.report(MarkdownCodes.HEADING_SKIPS, heading.place(),
                            "“" + words + "” is a heading of level " + heading.level() + ", but the one above it is of level "
                                    + level + ".",
                            "Write it with " + "#".repeat(level + 1) + ".");
                }
                level = Math.max(2, heading.level());
                ordered.add(new Prose.Heading(level, heading.runs(), heading.place()));
            } else {
                ordered.add(block);
            }
        }
        return ordered;
    }
}
