package exergue.dating;

import java.util.Optional;

/** What became of a text that should be EDTF. */
public sealed interface Parsed {

    record Accepted(Dating dating) implements Parsed { }

    /**
     * The text is refused.
     *
     * @param offset of the characters that are meant, in code points
     * @param length of them
     * @param what   is wrong: a full sentence
     * @param remedy what to write instead: a full sentence
     * @param edit   the whole text as it was surely meant, in EDTF; empty where more than one thing may be meant
     */
    record Refused(DatingFault fault, int offset, int length, String what, String remedy, Optional<String> edit)
            implements Parsed { }
}
