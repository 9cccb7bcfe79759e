package exergue.edition;

import exergue.measure.Kind;
import exergue.model.Reference.Relation;
import java.util.List;

/** The words the tool itself puts into a book, in the language of the book. The methods statement has its own. */
public record BookWords(String contents, String methods, String catalogue, String works, String obverse,
                        String reverse, String uniface, String legend, String obverseOf, String reverseOf,
                        String thisCoin, String sameDies, String variant, String notIn, String diameter, Measured measured) {

    public static final BookWords ENGLISH = new BookWords("Contents", "How the coins were measured", "Catalogue",
            "Works cited", "Obv.", "Rev.", "uniface", "legend", "Obverse of no.", "Reverse of no.",
            "this coin:", "same dies:", "variant:", "not in", "diameter:",
            new Measured(List.of("weight", "diameter", "die-axis", "thickness", "density", "surface"),
                    "by its density %s %s if alloyed with nothing but %s"));

    /**
     * Words for what is measured, where it stands among the remarks.
     *
     * @param nouns    in the order of {@link Kind}
     * @param fineness with places for the share, the metal and the other metal
     */
    public record Measured(List<String> nouns, String fineness) {

        String noun(Kind kind) {
            return nouns.get(kind.ordinal());
        }
    }

    /** What stands before a reference; empty for the plain case. */
    public String relation(Relation relation) {
        return switch (relation) {
            case SAME_TYPE -> "";
            case THIS_COIN -> thisCoin;
            case SAME_DIES -> sameDies;
            case VARIANT -> variant;
            case NOT_IN -> notIn;
        };
    }
}
