package exergue.dating;

/**
 * How the house prints dates.
 *
 * @param language  of the book
 * @param circa     before what is approximate: "c."
 * @param uncertain after what is uncertain: "?"
 * @param eraWords  BC and AD, or BCE and CE
 * @param ends      of spans of years AD; of years BC both are always in full, since 120–10 BC and 120–110 BC differ
 * @param centuries how a span is printed that is exactly a century
 * @param bareFrom  years AD from this one on stand without AD or CE
 */
public record DateStyle(DateLanguage language, String circa, String uncertain, EraWords eraWords, Ends ends,
                        Centuries centuries, int bareFrom) {

    public static final DateStyle DEFAULT = of(DateLanguage.ENGLISH);

    /** What is usual in the print of a language. */
    public static DateStyle of(DateLanguage language) {
        return new DateStyle(language, language.circa(), language.uncertain(), EraWords.BC_AD, Ends.FULL, Centuries.WORDS, 1000);
    }

    /** Whose era the words name; what they are, the language says. */
    public enum EraWords {
        BC_AD("BC/AD"), BCE_CE("BCE/CE");

        private final String word;

        EraWords(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** {@code AD 117–138} or {@code AD 117–38}. */
    public enum Ends {
        FULL("full"), SHORT("short");

        private final String word;

        Ends(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /**
     * {@code second century BC}, {@code 2nd century BC} or {@code 200–101 BC}. French, German and Italian have figures
     * for words.
     */
    public enum Centuries {
        WORDS("words"), FIGURES("figures"), YEARS("years");

        private final String word;

        Centuries(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }
}
