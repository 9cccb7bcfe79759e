package exergue.model;

/** The same words in each language that a book can be set in. */
record InEveryLanguage(String english, String french, String german, String italian) {

    String in(Language language) {
        return switch (language) {
            case ENGLISH -> english;
            case FRENCH -> french;
            case GERMAN -> german;
            case ITALIAN -> italian;
        };
    }
}
