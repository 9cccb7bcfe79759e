package exergue.edition;

import exergue.measure.Kind;
import exergue.model.BookWord;
import exergue.model.Damage;
import exergue.model.Language;
import exergue.model.Making;
import exergue.model.Reference.Relation;
import exergue.model.Shape;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The words of one book: those of its language, but for those the house has otherwise.
 *
 * @param own the house's own words; empty for most
 */
public record BookWords(Language language, Map<BookWord, String> own) {
    public BookWords {
        own = Collections.unmodifiableMap(new LinkedHashMap<>(own));
    }


    public String of(BookWord word) {
        return own.getOrDefault(word, word.in(language));
    }

    String of(Kind kind) {
        return of(BookWord.of(kind));
    }

    /** @param metal as an alloy names it: "gold" */
    String metal(String metal) {
        return of(BookWord.metal(metal));
    }

    String of(Damage damage) {
        return of(BookWord.of(damage));
    }

    String of(Making making) {
        return of(BookWord.of(making));
    }

    String of(Shape shape) {
        return of(BookWord.of(shape));
    }

    /** "diameter: across the flats" */
    String with(BookWord label, String words) {
        return of(label) + language.colon() + words;
    }

    /** What stands before a reference: "this coin:"; empty for the plain case. */
    String relation(Relation relation) {
        return switch (relation) {
            case SAME_TYPE -> "";
            case THIS_COIN -> labelled(BookWord.THIS_COIN);
            case SAME_DIES -> labelled(BookWord.SAME_DIES);
            case VARIANT -> labelled(BookWord.VARIANT);
            case NOT_IN -> of(BookWord.NOT_IN);
        };
    }

    private String labelled(BookWord word) {
        return of(word) + language.colon().stripTrailing();
    }
}
