package exergue.edition;

import exergue.model.Reference.Relation;

/** The words the tool itself puts into a book, in the language of the book. The methods statement has its own. */
public record BookWords(String contents, String methods, String catalogue, String works, String obverse,
                        String reverse, String uniface, String legend, String obverseOf, String reverseOf,
                        String thisCoin, String sameDies, String variant, String notIn, String diameter) {

    public static final BookWords ENGLISH = new BookWords("Contents", "How the coins were measured", "Catalogue",
            "Works cited", "Obv.", "Rev.", "uniface", "legend", "Obverse of no.", "Reverse of no.",
            "this coin:", "same dies:", "variant:", "not in", "diameter:");

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
