package exergue.model;

/**
 * What indexes and cross-references say.
 *
 * @param greek           where Greek letters stand
 * @param crossReferences what a cross-reference is printed as
 */
public record IndexStyle(By by, Greek greek, CrossReferences crossReferences) {

    public static final IndexStyle DEFAULT = new IndexStyle(By.NUMBERS, Greek.AFTER_LATIN, CrossReferences.NUMBERS);

    /** What entries of an index give. */
    public enum By {
        NUMBERS("numbers"), PAGES("pages");

        private final String word;

        By(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** Greek after Latin; or each Greek letter with the Latin ones it is transliterated by. */
    public enum Greek {
        AFTER_LATIN("after Latin"), MERGED("merged");

        private final String words;

        Greek(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public enum CrossReferences {
        NUMBERS("numbers"), NUMBERS_AND_PAGES("numbers and pages");

        private final String words;

        CrossReferences(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** Whether anything but the contents prints page numbers. */
    public boolean wantsPages() {
        return by == By.PAGES || crossReferences == CrossReferences.NUMBERS_AND_PAGES;
    }
}
