package exergue.source.markdown;

import exergue.finding.Place;
import exergue.model.Caption;
import exergue.model.Inline;
import exergue.model.Prose;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Captions of a chapter: a paragraph that begins with {@code Table:} or {@code Figure:}, or with the id by which others
 * refer to it, as in {@code Table [weights]:}, and stands directly before the table or picture it belongs to.
 */
final class CaptionLines {

    private static final Pattern OPENING = Pattern.compile("^(Table|Figure)(?: \\[([^\\]]+)\\])?:\\s+");
    private static final Pattern ID = Pattern.compile("[a-z0-9]+(?:[.-][a-z0-9]+)*");

    private final Manuscript manuscript;
    private final boolean allowed;

    private CaptionLines(Manuscript manuscript, boolean allowed) {
        this.manuscript = manuscript;
        this.allowed = allowed;
    }

    static CaptionLines of(Manuscript chapter) {
        return new CaptionLines(chapter, true);
    }

    /** For the notes of entries, whose tables and pictures are not numbered. */
    static CaptionLines refusedBy(Manuscript entry) {
        return new CaptionLines(entry, false);
    }

    /** The blocks, each caption joined to what it belongs to; one that belongs to nothing stays a paragraph. */
    List<Prose> joined(List<Prose> blocks) {
        List<Prose> joined = new ArrayList<>();
        for (int i = 0; i < blocks.size(); i++) {
            Optional<Caption> caption = caption(blocks.get(i));
            Prose next = i + 1 < blocks.size() ? blocks.get(i + 1) : null;
            if (caption.isPresent() && allowed && belongs(caption.get().kind(), next)) {
                joined.add(under(caption.get(), (Prose.Captioned) next));
                i++;
            } else {
                Place place = blocks.get(i).place();
                caption.ifPresent(its -> alone(its, place));
                joined.add(blocks.get(i));
            }
        }
        return joined;
    }

    private Prose under(Caption caption, Prose.Captioned block) {
        if (block.caption().isPresent()) {
            manuscript.report(MarkdownCodes.CAPTION_ALONE, block.place(),
                    "This picture has two captions: the paragraph before it, and the words in quotation marks after its path.",
                    "The paragraph is printed. Take the words in quotation marks away.");
        }
        return block.captioned(Optional.of(caption));
    }

    private static boolean belongs(Caption.Kind kind, Prose block) {
        return block instanceof Prose.Figures
                || (kind == Caption.Kind.TABLE ? block instanceof Prose.Table : block instanceof Prose.Picture);
    }

    private void alone(Caption caption, Place place) {
        if (allowed) {
            manuscript.report(MarkdownCodes.CAPTION_ALONE, place, "This paragraph begins like the caption of a " + thing(caption)
                    + ", but no " + thing(caption) + " follows it.",
                    "Put it directly before its " + thing(caption) + ", or begin it otherwise.");
        } else {
            manuscript.report(MarkdownCodes.CAPTION_ALONE, place,
                    "The tables and pictures of an entry’s note have no numbers, so this is no caption.",
                    "Write it as a sentence, or move it into a chapter together with what it belongs to.");
        }
    }

    private static String thing(Caption caption) {
        return caption.kind() == Caption.Kind.TABLE ? "table" : "picture";
    }

    private Optional<Caption> caption(Prose block) {
        if (!(block instanceof Prose.Paragraph paragraph) || paragraph.runs().isEmpty()
                || !(paragraph.runs().get(0) instanceof Inline.Words first)) {
            return Optional.empty();
        }
        Matcher opening = OPENING.matcher(first.text());
        if (!opening.find()) {
            return Optional.empty();
        }
        List<Inline> runs = new ArrayList<>(paragraph.runs());
        runs.set(0, new Inline.Words(first.text().substring(opening.end())));
        stripEnd(runs);
        return Optional.of(new Caption(Caption.Kind.valueOf(opening.group(1).toUpperCase(Locale.ROOT)),
                Optional.ofNullable(opening.group(2)).map(id -> id(id, opening.start(2), paragraph.place())), runs,
                Optional.empty()));
    }

    /** Where the picture stands in the same paragraph, a line has ended before it. */
    private static void stripEnd(List<Inline> runs) {
        int last = runs.size() - 1;
        if (runs.get(last) instanceof Inline.Words words) {
            runs.set(last, new Inline.Words(words.text().stripTrailing()));
        }
    }

    private Written<String> id(String id, int at, Place line) {
        Place place = line.within(at, id.length());
        if (!ID.matcher(id).matches()) {
            manuscript.report(MarkdownCodes.CAPTION_ID, place, "“" + id
                    + "” is not an id: ids have small letters a to z, digits, and hyphens or full stops between them.",
                    "Give the table or figure a short name in such letters.");
        }
        return new Written<>(id, place);
    }
}
