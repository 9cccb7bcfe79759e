package exergue.source.text;

import java.nio.charset.Charset;
import java.util.Locale;

/** Which encoding a file that is not UTF-8 probably has, in words. A guess, and said to be one. */
final class EncodingGuess {

    private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");

    private EncodingGuess() { }

    static boolean looksLikeUtf16(byte[] bytes) {
        if (bytes.length < 2) {
            return false;
        }
        int first = bytes[0] & 0xFF;
        int second = bytes[1] & 0xFF;
        boolean mark = first == 0xFF && second == 0xFE || first == 0xFE && second == 0xFF;
        return mark || first == 0 && second != 0 || first != 0 && second == 0;
    }

    static String of(byte[] bytes, int bad) {
        if (looksLikeUtf16(bytes)) {
            return "it looks like UTF-16, which some editors call “Unicode”";
        }
        String hex = String.format(Locale.ROOT, "%02X", bytes[bad] & 0xFF);
        if (highBytesInARow(bytes, bad) >= 3) {
            return "the byte " + hex + " cannot stand here. It is probably Greek or Cyrillic in an old encoding "
                    + "(Windows-1253 or Windows-1251)";
        }
        String letter = new String(bytes, bad, 1, WINDOWS_1252);
        boolean seen = !letter.equals("\uFFFD") && letter.codePointAt(0) > 0x9F;
        return "the byte " + hex + " cannot stand here"
                + (seen ? ". In Windows-1252 (“ANSI”, “Latin 1”) it is “" + letter + "”, so that is probably the encoding" : "");
    }

    private static int highBytesInARow(byte[] bytes, int from) {
        int count = 0;
        while (from + count < bytes.length && bytes[from + count] < 0) {
            count++;
        }
        return count;
    }
}
