package exergue.model;

import java.util.List;
import java.util.stream.Stream;

/** One Markdown file. @param path inside the tree; @param title the words of its level-1 heading */
public record Chapter(String path, List<Inline> title, List<Prose> blocks) {

    /** The author's own sentences about measuring; they follow the methods statement and need not be a part of the plan. */
    public static final String METHODS = "chapters/methods.md";

    public Chapter {
        title = List.copyOf(title);
        blocks = List.copyOf(blocks);
    }

    /** All it shows, in order; those in quotations and lists too. */
    public Stream<Prose.Picture> pictures() {
        return pictures(blocks);
    }

    /** All that these blocks show. */
    public static Stream<Prose.Picture> pictures(List<Prose> blocks) {
        return blocks.stream().flatMap(block -> {
            if (block instanceof Prose.Picture picture) {
                return Stream.of(picture);
            }
            if (block instanceof Prose.Quotation quotation) {
                return pictures(quotation.blocks());
            }
            return block instanceof Prose.Items items ? items.items().stream().flatMap(Chapter::pictures) : Stream.empty();
        });
    }
}
