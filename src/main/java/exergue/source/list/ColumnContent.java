package exergue.source.list;

import exergue.measure.Kind;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What the cells of one column of a list are, in the words that the file beside the list uses. */
public enum ColumnContent {

    ID("id"),
    TYPE("type"), TYPE_REFERENCE("type reference"), MINT("mint"), RULER("ruler"), DENOMINATION("denomination"), METAL("metal"),
    INVENTORY_NUMBER("inventory number"), COLLECTION("collection"),
    WEIGHT(Kind.WEIGHT), DIAMETER(Kind.DIAMETER), AXIS(Kind.AXIS), THICKNESS(Kind.THICKNESS), DENSITY(Kind.DENSITY),
    SURFACE(Kind.SURFACE),
    OBVERSE_LEGEND("obverse legend"), REVERSE_LEGEND("reverse legend"),
    OBVERSE_DESCRIPTION("obverse description"), REVERSE_DESCRIPTION("reverse description"),
    OBVERSE_DIE("obverse die"), REVERSE_DIE("reverse die"),
    OBVERSE_PHOTOGRAPH("obverse photograph"), REVERSE_PHOTOGRAPH("reverse photograph"),
    FIND_SPOT("find-spot"), FIND_CONTEXT("find context"), FIND_NUMBER("find number"),
    PROVENANCE("provenance"), REFERENCE("reference"), COUNTERMARK("countermark"), DAMAGE("damage"), NOTE("note"),
    LEFT_OUT("left out");

    private final String word;
    private final Optional<Kind> kind;

    ColumnContent(String word) {
        this.word = word;
        this.kind = Optional.empty();
    }

    ColumnContent(Kind kind) {
        this.word = kind.word();
        this.kind = Optional.of(kind);
    }

    public String word() {
        return word;
    }

    /** Of the reading, where the cells are readings. */
    public Optional<Kind> kind() {
        return kind;
    }

    /** True for what an entry can have several of, so that more than one column may hold it. */
    public boolean maySeveral() {
        return this == PROVENANCE || this == REFERENCE || this == DAMAGE || this == NOTE || this == LEFT_OUT;
    }

    /** True for what tells which type a coin is of, and is written into no entry. */
    public boolean tellsType() {
        return this == TYPE_REFERENCE || this == MINT || this == RULER || this == DENOMINATION || this == METAL;
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(ColumnContent::word).toList();
    }

    /** The content of that word. */
    public static Optional<ColumnContent> of(String word) {
        return Arrays.stream(values()).filter(content -> content.word.equals(word)).findFirst();
    }
}
