package exergue.dating;

/** First and last of some years, as EDTF counts them: 0 is 1 BC, -119 is 120 BC. Equal for one year. */
public record Years(int first, int last) {

    public Years {
        if (first > last) {
            throw new IllegalArgumentException(first + " after " + last);
        }
    }

    /** True where they have a year in common. */
    public boolean meets(Years other) {
        return first <= other.last && other.first <= last;
    }
}
