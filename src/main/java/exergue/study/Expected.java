package exergue.study;

import exergue.finding.Code;
import java.math.BigDecimal;

/**
 * What figures a coin of some group is expected to have, in g or mm.
 *
 * @param code  raised by a coin that is outside
 * @param words why these are expected: "the 12 coins of its type with a weight have a median of 3.87 g …"
 */
record Expected(Code code, double from, double to, String words) {

    boolean holds(BigDecimal figure) {
        return holds(figure.doubleValue());
    }

    boolean holds(double figure) {
        return figure >= from && figure <= to;
    }

    boolean isAbove(double figure) {
        return figure < from;
    }
}
