package exergue.legend;

import java.util.Optional;

/**
 * What is wrong at one place of a legend.
 *
 * @param offset of the characters that are meant, in code points
 * @param length of them
 * @param what   is wrong: a full sentence
 * @param remedy what to do: a full sentence
 * @param meant  what is to stand in place of these characters, where there can be no doubt
 */
public record Remark(LegendFault fault, int offset, int length, String what, String remedy, Optional<String> meant) {

    /** One that nobody but the author can mend. */
    public Remark(LegendFault fault, int offset, int length, String what, String remedy) {
        this(fault, offset, length, what, remedy, Optional.empty());
    }
}
