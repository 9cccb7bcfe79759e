package exergue.measure;

import java.math.BigDecimal;
import java.util.List;

/** A piece of the text of a reading, from and to in characters of {@link TextMarks#plain()}. */
sealed interface Piece {

    int from();

    int to();

    /** One letter that stands for this piece in the shape of a text: {@code 18 x 17 mm} has the shape {@code F×FU}. */
    char shape();

    /** Digits with their marks, not yet understood: {@code 3.87}, {@code 6:30}. */
    record Digits(String text, int from, int to) implements Piece {
        @Override
        public char shape() {
            return 'D';
        }
    }

    /** A typographic fraction. */
    record Glyph(int numerator, int denominator, int from, int to) implements Piece {
        @Override
        public char shape() {
            return 'G';
        }
    }

    /**
     * A figure.
     *
     * @param step   smallest step the record shows: 0.01 for 3.87, 1/16 for 11/16
     * @param form how it was written
     */
    record Figure(BigDecimal value, BigDecimal step, Form form, int from, int to) implements Piece {
        @Override
        public char shape() {
            return 'F';
        }

        boolean whole() {
            return form == Form.WHOLE;
        }

        enum Form { WHOLE, DECIMAL, FRACTION, CLOCK }
    }

    /** A word in lower case without its full stops. */
    record Word(String text, int from, int to) implements Piece {
        @Override
        public char shape() {
            return 'W';
        }
    }

    /** A word or sign that stands for a unit; several meanings where it stands for more than one. */
    record UnitWord(String word, List<Unit> meanings, int from, int to) implements Piece {
        public UnitWord {
            meanings = List.copyOf(meanings);
        }

        @Override
        public char shape() {
            return 'U';
        }
    }

    /** One of × - / &lt; &gt; ~ ?. */
    record Sign(char sign, int from, int to) implements Piece {
        @Override
        public char shape() {
            return sign;
        }
    }

    /** An arrow, in eighths of a turn clockwise from upright. */
    record Arrow(int eighths, int from, int to) implements Piece {
        @Override
        public char shape() {
            return 'A';
        }
    }

    /** The shapes of all pieces in a row. */
    static String shape(List<Piece> pieces) {
        StringBuilder shape = new StringBuilder();
        pieces.forEach(piece -> shape.append(piece.shape()));
        return shape.toString();
    }
}
