package exergue.edition.apparatus;

import com.ibm.icu.text.Collator;
import com.ibm.icu.text.RuleBasedCollator;
import com.ibm.icu.text.Transliterator;
import com.ibm.icu.util.ULocale;
import exergue.model.IndexStyle.Greek;
import exergue.model.Language;
import java.text.Normalizer;
import java.util.Comparator;

/**
 * The order of an index: that of the book's language (Unicode Collation Algorithm with CLDR's tailorings, as ICU has
 * them). Figures count as numbers. Greek follows Latin, or each letter stands with the Latin one it is transliterated by.
 */
final class IndexOrder implements Comparator<String> {

    private final RuleBasedCollator order;
    private final RuleBasedCollator letters;
    private final Transliterator toLatin;

    IndexOrder(Language language, Greek greek) {
        this.order = collator(language);
        this.letters = collator(language);
        this.letters.setStrength(Collator.PRIMARY);
        this.toLatin = greek == Greek.MERGED ? Transliterator.getInstance("Greek-Latin") : null;
    }

    private static RuleBasedCollator collator(Language language) {
        RuleBasedCollator collator = (RuleBasedCollator) Collator.getInstance(new ULocale(language.code()));
        collator.setNumericCollation(true);
        return collator;
    }

    /** Texts that the language does not tell apart still have a fixed order. */
    @Override
    public int compare(String a, String b) {
        int byLanguage = order.compare(key(a), key(b));
        return byLanguage != 0 ? byLanguage : a.compareTo(b);
    }

    /** Whether they begin with the same letter, so that no room is wanted between them. */
    boolean sameLetter(String a, String b) {
        return letters.compare(initial(a), initial(b)) == 0;
    }

    private String initial(String text) {
        String key = key(text);
        return key.codePoints().filter(Character::isLetterOrDigit).limit(1).mapToObj(Character::toString)
                .findFirst().map(letter -> Character.isDigit(letter.codePointAt(0)) ? "0" : letter).orElse("");
    }

    /** Composed for compatibility, so that a lunate sigma is a sigma. */
    private String key(String text) {
        String composed = Normalizer.normalize(text, Normalizer.Form.NFKC);
        return toLatin == null ? composed : toLatin.transliterate(composed);
    }
}
