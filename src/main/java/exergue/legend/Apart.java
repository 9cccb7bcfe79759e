package exergue.legend;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** How many letters a legend as it is preserved is away from one that is known whole. */
public final class Apart {

    /** One letter, one letter of which nothing is left, or any number of those. */
    private record Token(String letter, boolean repeats) {

        private static final Token LOST = new Token("", false);
        private static final Token LOST_RUN = new Token("", true);

        boolean fits(String other) {
            return letter.isEmpty() || letter.equals(other);
        }
    }

    private Apart() { }

    /**
     * The least number of letters to change, add or take out (the edit distance of Levenshtein) until the one can be a
     * remainder of the other. What is lost fits any letter; what the editor has restored, written out or added counts as
     * written, what was cut by mistake does not count; capitals are small letters, a lunate sigma is a sigma, and a letter is
     * its like of the other alphabet, of which {@link LookAlikes} speaks.
     *
     * @param whole without lost letters; empty comes back where it has some
     */
    public static OptionalInt letters(Legend preserved, Legend whole) {
        List<Token> wanted = tokens(whole.parts());
        if (wanted.stream().anyMatch(token -> token.letter().isEmpty())) {
            return OptionalInt.empty();
        }
        List<Token> seen = tokens(preserved.parts());
        int[] row = new int[wanted.size() + 1];
        for (int i = 1; i < row.length; i++) {
            row[i] = i;
        }
        for (Token token : seen) {
            row = next(row, token, wanted);
        }
        return OptionalInt.of(row[wanted.size()]);
    }

    /** The costs after one more token, by how many letters of the whole legend are used up. */
    private static int[] next(int[] before, Token token, List<Token> wanted) {
        int[] row = new int[before.length];
        int free = token.repeats() ? 0 : 1;
        row[0] = before[0] + free;
        for (int i = 1; i < row.length; i++) {
            int replaced = before[i - 1] + (token.fits(wanted.get(i - 1).letter()) ? 0 : 1);
            row[i] = Math.min(replaced, Math.min(before[i], row[i - 1]) + free);
        }
        return row;
    }

    private static List<Token> tokens(List<Part> parts) {
        List<Token> tokens = new ArrayList<>();
        for (Part part : parts) {
            if (part instanceof Part.Lost lost) {
                lost.count().ifPresentOrElse(count -> {
                    for (int i = 0; i < count; i++) {
                        tokens.add(Token.LOST);
                    }
                }, () -> tokens.add(Token.LOST_RUN));
            } else if (part instanceof Part.Bracketed bracketed) {
                if (bracketed.bracket() != Bracket.SUPERFLUOUS) {
                    tokens.addAll(tokens(bracketed.parts()));
                }
            } else {
                Letters.sortKey(List.of(part)).codePoints().mapToObj(point -> new Token(LookAlikes.asGreek(Character.toString(point)), false))
                        .forEach(tokens::add);
            }
        }
        return tokens;
    }
}
