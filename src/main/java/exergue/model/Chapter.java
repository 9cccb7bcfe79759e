package exergue.model;

import java.util.List;

/** One Markdown file. @param path inside the tree; @param title the words of its level-1 heading */
public record Chapter(String path, List<Inline> title, List<Prose> blocks) {

    /** The author's own sentences about measuring; they follow the methods statement and need not be a part of the plan. */
    public static final String METHODS = "chapters/methods.md";

    public Chapter {
        title = List.copyOf(title);
        blocks = List.copyOf(blocks);
    }
}
