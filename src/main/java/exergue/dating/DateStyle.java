package exergue.dating;

/**
 * How the house prints dates.
 *
 * @param circa     before what is approximate: "c."
 * @param uncertain after what is uncertain: "?"
 * @param eraWords  BC and AD, or BCE and CE
 * @param ends      of spans of years AD; of years BC both are always in full, since 120–10 BC and 120–110 BC differ
 * @param centuries how a span is printed that is exactly a century
 * @param bareFrom  years AD from this one on stand without AD or CE
 */
public record DateStyle(String circa, String uncertain, EraWords eraWords, Ends ends, Centuries centuries, int bareFrom) {

    public static final DateStyle DEFAULT = new DateStyle("c.", "?", EraWords.BC_AD, Ends.FULL, Centuries.WORDS, 1000);

    /** The words of the common era. */
    public enum EraWords {
        BC_AD("BC/AD", "BC", "AD"), BCE_CE("BCE/CE", "BCE", "CE");

        private final String word;
        private final String before;
        private final String after;

        EraWords(String word, String before, String after) {
            this.word = word;
            this.before = before;
            this.after = after;
        }

        public String word() {
            return word;
        }

        /** After a year: "120 BC". */
        String before() {
            return before;
        }

        /** Before or after a year: "AD 5", "5 CE". */
        String after(String years) {
            return this == BC_AD ? after + " " + years : years + " " + after;
        }

        String after() {
            return after;
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

    /** {@code second century BC}, {@code 2nd century BC} or {@code 200–101 BC}. */
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
