package exergue.finding;

/**
 * One kind of fault, with what its page in the docs says.
 *
 * @param id       stable name in plain words, lower case with hyphens: {@code unknown-key}
 * @param severity how much it matters
 * @param title    the fault in one short sentence, without a full stop
 * @param why      why it matters to the reader of the book; a few plain sentences
 * @param faulty   a short piece of source that has the fault
 * @param mended   the same piece, mended
 */
public record Code(String id, Severity severity, String title, String why, String faulty, String mended) {

    public Code {
        if (!id.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
            throw new IllegalArgumentException("a code is words in lower case joined by hyphens: " + id);
        }
    }

    /** The same kind of fault where a house gives it another weight. */
    public Code as(Severity other) {
        return other == severity ? this : new Code(id, other, title, why, faulty, mended);
    }
}
