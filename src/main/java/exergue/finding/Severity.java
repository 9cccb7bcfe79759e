package exergue.finding;

/** How much a finding matters. An error keeps the book from being set; a warning and a note do not. */
public enum Severity {
    ERROR("error"), WARNING("warning"), NOTE("note");

    private final String word;

    Severity(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
