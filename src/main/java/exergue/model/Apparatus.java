package exergue.model;

import java.util.List;
import java.util.Optional;

/**
 * What the apparatus of the book needs besides the entries.
 *
 * @param see     see-references of the indexes
 * @param edition what the earlier edition is called whose numbers these are; empty where it has no name
 * @param former  numbers that coins had in the earlier edition, in the order of its file
 * @param pictures who took and who allows the pictures of chapters
 */
public record Apparatus(List<See> see, Optional<Written<String>> edition, List<FormerNumber> former,
                        List<PictureRights> pictures) {

    public static final Apparatus NONE = new Apparatus(List.of(), Optional.empty(), List.of(), List.of());

    public Apparatus {
        see = List.copyOf(see);
        former = List.copyOf(former);
        pictures = List.copyOf(pictures);
    }

    /** A reader who looks up one word is sent to another. */
    public record See(Written<String> from, Written<String> to) { }

    /** @param coin id; the coin need not be in the catalogue any more */
    public record FormerNumber(Written<String> coin, Written<Integer> number) { }
}
