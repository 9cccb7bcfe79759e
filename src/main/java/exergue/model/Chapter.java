package exergue.model;

import java.util.List;

/** One Markdown file. @param path inside the tree; @param title the words of its level-1 heading */
public record Chapter(String path, List<Inline> title, List<Prose> blocks) {

    public Chapter {
        title = List.copyOf(title);
        blocks = List.copyOf(blocks);
    }
}
