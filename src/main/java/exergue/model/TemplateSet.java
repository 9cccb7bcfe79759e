package exergue.model;

/** The page templates that come with the program, one set for each kind of book. */
public enum TemplateSet {

    /** Types, with their specimens in rows. */
    CORPUS("corpus"),
    /** One entry a coin, its picture beside it. */
    COLLECTION("collection"),
    /** One short paragraph a coin, its find number and context first. */
    EXCAVATION("excavation");

    private final String word;

    TemplateSet(String word) {
        this.word = word;
    }

    /** As catalogue.yaml has it; also the name of the folder. */
    public String word() {
        return word;
    }
}
