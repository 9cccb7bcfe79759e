package exergue.measure;

/**
 * What fixes a factor, and how far that was looked up. Tables for the keepers of the program print {@link #noted()};
 * a book names a publication only where {@link #seen()}.
 *
 * @param text publication, or the rule that the factor follows from
 */
public record UnitSource(String text, Standing standing) {

    /** Seen in a published copy or a quotation from it; remembered only; a custom that no publication fixes. */
    public enum Standing { SEEN, REMEMBERED, CUSTOM }

    static UnitSource seen(String text) {
        return new UnitSource(text, Standing.SEEN);
    }

    static UnitSource remembered(String text) {
        return new UnitSource(text, Standing.REMEMBERED);
    }

    static UnitSource custom(String text) {
        return new UnitSource(text, Standing.CUSTOM);
    }

    /** The same source with what follows from it. */
    UnitSource with(String more) {
        return new UnitSource(text + more, standing);
    }

    public boolean seen() {
        return standing == Standing.SEEN;
    }

    /** With a note where nobody has looked it up. */
    public String noted() {
        return standing == Standing.REMEMBERED ? text + " (from memory)" : text;
    }
}
