package exergue.typeset;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where the words of a language may be divided, after the patterns that TeX has for it and the algorithm of F. M. Liang,
 * Word Hy-phen-a-tion by Com-put-er, Stanford 1983. The files of patterns are as their authors published them.
 */
final class Patterns {

    private static final Map<String, String> FILES = Map.of("en", "hyph-en-gb.tex", "fr", "hyph-fr.tex",
            "de", "hyph-de-1996.tex", "it", "hyph-it.tex");
    private static final Pattern BLOCK = Pattern.compile("\\\\(patterns|hyphenation)\\s*\\{([^}]*)}");

    /** Fewest letters before and after a division. */
    private static final int BEFORE = 2;
    private static final int AFTER = 3;

    private final Map<String, byte[]> patterns = new HashMap<>();
    private final Map<String, byte[]> exceptions = new HashMap<>();
    private int longest;

    private Patterns() { }

    /** Of the language with this code; none for a language whose patterns the program does not have. */
    static Patterns of(String language) {
        Patterns patterns = new Patterns();
        if (FILES.containsKey(language)) {
            Matcher blocks = BLOCK.matcher(text(FILES.get(language)).replaceAll("(?m)%.*$", ""));
            while (blocks.find()) {
                for (String pattern : blocks.group(2).strip().split("\\s+")) {
                    patterns.add(pattern, blocks.group(1).equals("patterns"));
                }
            }
        }
        return patterns;
    }

    private static String text(String file) {
        try (InputStream in = Patterns.class.getResourceAsStream("/exergue/hyphenation/" + file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** {@code .ab3sol}: letters, with a weight before each and after the last; {@code uni-ver-sity}: a word divided. */
    private void add(String written, boolean pattern) {
        StringBuilder letters = new StringBuilder();
        byte[] weights = new byte[written.length() + 1];
        for (char letter : written.toCharArray()) {
            if (Character.isDigit(letter) || letter == '-') {
                weights[letters.length()] = (byte) (letter == '-' ? 1 : letter - '0');
            } else {
                letters.append(letter);
            }
        }
        if (!letters.isEmpty()) {
            (pattern ? patterns : exceptions).put(letters.toString(), weights);
            longest = Math.max(longest, letters.length());
        }
    }

    /** The word with this between its parts. */
    String divided(String word, char between) {
        byte[] weights = weights(word.toLowerCase(Locale.ROOT));
        StringBuilder divided = new StringBuilder();
        for (int i = 0; i < word.length(); i++) {
            if (i >= BEFORE && i <= word.length() - AFTER && weights[i] % 2 == 1) {
                divided.append(between);
            }
            divided.append(word.charAt(i));
        }
        return divided.toString();
    }

    /** An odd weight before a letter lets the word be divided there. */
    private byte[] weights(String word) {
        if (exceptions.containsKey(word)) {
            return exceptions.get(word);
        }
        String closed = "." + word + ".";
        byte[] weights = new byte[closed.length() + 1];
        for (int from = 0; from < closed.length(); from++) {
            for (int to = from + 1; to <= Math.min(closed.length(), from + longest); to++) {
                byte[] found = patterns.get(closed.substring(from, to));
                for (int i = 0; found != null && i <= to - from; i++) {
                    weights[from + i] = (byte) Math.max(weights[from + i], found[i]);
                }
            }
        }
        byte[] ofLetters = new byte[word.length() + 1];
        System.arraycopy(weights, 1, ofLetters, 0, ofLetters.length);
        return ofLetters;
    }
}
