package exergue.model;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How large a coin is printed: 2:1 is twice its size.
 *
 * @param paper what it measures on paper where it measures {@code coin} in the hand; both from 1 to 99
 */
public record PrintScale(int paper, int coin) {

    /** As large as in the hand. */
    public static final PrintScale LIFE = new PrintScale(1, 1);

    /** What a scale looks like in an entry. */
    public static final String PATTERN = "[1-9][0-9]? ?: ?[1-9][0-9]?";

    private static final Pattern SHAPE = Pattern.compile("([1-9][0-9]?) ?: ?([1-9][0-9]?)");

    public PrintScale {
        if (paper < 1 || coin < 1 || paper > 99 || coin > 99) {
            throw new IllegalArgumentException(paper + ":" + coin + " is no scale");
        }
    }

    /** Empty for what is not two whole numbers with a colon between them. */
    public static Optional<PrintScale> of(String text) {
        Matcher matcher = SHAPE.matcher(text.strip());
        return matcher.matches()
                ? Optional.of(new PrintScale(Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2))))
                : Optional.empty();
    }

    public boolean isLife() {
        return paper == coin;
    }

    /** This length as it is printed; exact where that has a finite decimal. */
    public BigDecimal times(BigDecimal millimetres) {
        return millimetres.multiply(new BigDecimal(paper)).divide(new BigDecimal(coin), MathContext.DECIMAL64);
    }

    /** "2:1" */
    public String text() {
        return paper + ":" + coin;
    }
}
