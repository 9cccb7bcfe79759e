package exergue.cli.report;

/**
 * How many columns of a terminal a character takes: none for a combining mark, two for East Asian characters and
 * pictographs, else one. Ranges after Unicode Standard Annex #11, classes W and F.
 */
final class CharacterWidth {

    private static final int[][] WIDE = {
        {0x1100, 0x115F}, {0x2E80, 0x303E}, {0x3041, 0xA4CF}, {0xA960, 0xA97F}, {0xAC00, 0xD7A3}, {0xF900, 0xFAFF},
        {0xFE10, 0xFE19}, {0xFE30, 0xFE6F}, {0xFF00, 0xFF60}, {0xFFE0, 0xFFE6}, {0x1F300, 0x1F64F},
        {0x1F680, 0x1F6FF}, {0x1F900, 0x1F9FF}, {0x20000, 0x3FFFD}
    };

    private CharacterWidth() { }

    static int of(int character) {
        int type = Character.getType(character);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK || type == Character.FORMAT) {
            return 0;
        }
        for (int[] range : WIDE) {
            if (character >= range[0] && character <= range[1]) {
                return 2;
            }
        }
        return 1;
    }
}
