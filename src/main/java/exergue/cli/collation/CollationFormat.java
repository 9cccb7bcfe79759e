package exergue.cli.collation;

import java.util.Locale;

/** In which form a comparison is given out. */
public enum CollationFormat {
    /** For a screen. */
    TEXT,
    /** For a comment under a proposed change. */
    MARKDOWN,
    /** For programs. */
    JSON;

    /** The whole; ends with a line end. */
    public String render(Compared compared) {
        return switch (this) {
            case TEXT -> CollationText.render(compared);
            case MARKDOWN -> CollationMarkdown.render(compared);
            case JSON -> CollationJson.render(compared);
        };
    }

    /** As typed after {@code --format}. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
