package exergue.edition;

/** Roman figures, in small letters. */
public final class Roman {

    private static final int[] VALUES = {1000, 900, 500, 400, 100, 90, 50, 40, 10, 9, 5, 4, 1};
    private static final String[] LETTERS = {"m", "cm", "d", "cd", "c", "xc", "l", "xl", "x", "ix", "v", "iv", "i"};

    private Roman() { }

    public static String of(int number) {
        StringBuilder roman = new StringBuilder();
        int rest = number;
        for (int i = 0; i < VALUES.length; i++) {
            while (rest >= VALUES[i]) {
                roman.append(LETTERS[i]);
                rest -= VALUES[i];
            }
        }
        return roman.toString();
    }
}
