package exergue;

/** The steps of the pipeline, in order. */
public enum Stage {
    READ("reading the source"),
    CHECK("checking the entries"),
    GAUGE("measuring the photographs"),
    ARRANGE("arranging the book"),
    PICTURES("making the photographs ready"),
    TYPESET("setting the pages"),
    WRITE("writing the book and its data"),
    WEB("making the pages for a browser");

    private final String words;

    Stage(String words) {
        this.words = words;
    }

    /** What is being done, as a person is told: "setting the pages". */
    public String words() {
        return words;
    }
}
