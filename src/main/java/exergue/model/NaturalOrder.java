package exergue.model;

import java.util.Comparator;

/**
 * The order a reader expects of ids and numbers: runs of digits count as numbers (lk-9 before lk-10), letters compare
 * without regard to case. Texts that differ only in case or leading noughts still have a fixed order.
 */
public final class NaturalOrder implements Comparator<String> {

    public static final NaturalOrder INSTANCE = new NaturalOrder();

    private NaturalOrder() { }

    @Override
    public int compare(String a, String b) {
        int i = 0;
        int j = 0;
        while (i < a.length() && j < b.length()) {
            int order;
            if (isDigit(a.charAt(i)) && isDigit(b.charAt(j))) {
                int endA = endOfDigits(a, i);
                int endB = endOfDigits(b, j);
                order = compareDigits(a.substring(i, endA), b.substring(j, endB));
                i = endA;
                j = endB;
            } else {
                order = Character.compare(folded(a.charAt(i++)), folded(b.charAt(j++)));
            }
            if (order != 0) {
                return order;
            }
        }
        int byRest = Integer.compare(a.length() - i, b.length() - j);
        return byRest != 0 ? byRest : a.compareTo(b);
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static char folded(char c) {
        return Character.toLowerCase(Character.toUpperCase(c));
    }

    private static int endOfDigits(String text, int from) {
        int end = from;
        while (end < text.length() && isDigit(text.charAt(end))) {
            end++;
        }
        return end;
    }

    /** Compares as numbers of any length, without building them. */
    private static int compareDigits(String a, String b) {
        String x = withoutLeadingNoughts(a);
        String y = withoutLeadingNoughts(b);
        return x.length() != y.length() ? Integer.compare(x.length(), y.length()) : x.compareTo(y);
    }

    private static String withoutLeadingNoughts(String digits) {
        int start = 0;
        while (start < digits.length() - 1 && digits.charAt(start) == '0') {
            start++;
        }
        return digits.substring(start);
    }
}
