package exergue.source.works;

import java.text.Normalizer;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The letters behind the LaTeX of a bibliography: accents, letters of their own, dashes, spaces, emphasis. The commands
 * are those of Lamport, LaTeX (2nd edition, 1994), tables 3.1 and 3.2.
 */
final class Latex {

    /** Marks that emphasis of a title is kept as, in CSL's own way. */
    private static final Pattern EMPHASIS = Pattern.compile("\\\\(?:emph|textit)\\s*\\{([^{}]*)\\}");
    private static final Pattern ACCENT = Pattern.compile(
            "\\{?\\\\(?:([`'^\"~=.])\\s*|([uvHtcdbrk])(?:\\s+|(?=\\{)))\\{?\\s*(\\\\[ij](?![A-Za-z])|[\\p{L}])\\s*\\}?");
    private static final Pattern LETTER = Pattern.compile("\\\\(ae|AE|oe|OE|aa|AA|ss|dh|DH|th|TH|dj|DJ|o|O|l|L|i|j|S|P|"
            + "textendash|textemdash|ldots|dots|textquoteleft|textquoteright|slash)(?![A-Za-z])(?:\\{\\}|\\s+)?");
    private static final Pattern SIGN = Pattern.compile("\\\\([&%$#_{}])");
    private static final Pattern LEFT = Pattern.compile("\\\\([A-Za-z]+|[^A-Za-z\\s])");

    private static final Map<String, String> COMBINING = Map.ofEntries(Map.entry("`", "\u0300"), Map.entry("'", "\u0301"),
            Map.entry("^", "\u0302"), Map.entry("~", "\u0303"), Map.entry("=", "\u0304"), Map.entry("u", "\u0306"),
            Map.entry(".", "\u0307"), Map.entry("\"", "\u0308"), Map.entry("r", "\u030A"), Map.entry("H", "\u030B"),
            Map.entry("v", "\u030C"), Map.entry("d", "\u0323"), Map.entry("c", "\u0327"), Map.entry("k", "\u0328"),
            Map.entry("b", "\u0331"), Map.entry("t", "\u0361"));
    private static final Map<String, String> LETTERS = Map.ofEntries(Map.entry("ae", "æ"), Map.entry("AE", "Æ"),
            Map.entry("oe", "œ"), Map.entry("OE", "Œ"), Map.entry("aa", "å"), Map.entry("AA", "Å"), Map.entry("ss", "ß"),
            Map.entry("dh", "ð"), Map.entry("DH", "Ð"), Map.entry("th", "þ"), Map.entry("TH", "Þ"), Map.entry("dj", "đ"),
            Map.entry("DJ", "Đ"), Map.entry("o", "ø"), Map.entry("O", "Ø"), Map.entry("l", "ł"), Map.entry("L", "Ł"),
            Map.entry("i", "ı"), Map.entry("j", "ȷ"), Map.entry("S", "§"), Map.entry("P", "¶"),
            Map.entry("textendash", "–"), Map.entry("textemdash", "—"), Map.entry("ldots", "…"), Map.entry("dots", "…"),
            Map.entry("textquoteleft", "‘"), Map.entry("textquoteright", "’"), Map.entry("slash", "/"));

    private static final char OPEN = '\uE000';
    private static final char CLOSE = '\uE001';

    private Latex() { }

    /** @param unread the first command that has no meaning here */
    record Text(String words, Optional<String> unread) { }

    /** Braces that only keep capitals are gone; a command without a meaning stands as it stood. */
    static Text read(String latex) {
        String text = EMPHASIS.matcher(latex).replaceAll("<i>$1</i>");
        text = replace(ACCENT, text, Latex::accented);
        text = replace(LETTER, text, letter -> LETTERS.get(letter.group(1)));
        text = replace(SIGN, text, sign -> switch (sign.group(1)) {
            case "{" -> String.valueOf(OPEN);
            case "}" -> String.valueOf(CLOSE);
            default -> sign.group(1);
        });
        text = text.replace("{", "").replace("}", "").replace(OPEN, '{').replace(CLOSE, '}')
                .replace("---", "—").replace("--", "–").replace("``", "“").replace("''", "”").replace('~', '\u00A0')
                .replaceAll("[\\s&&[^\u00A0]]+", " ").strip();
        Matcher left = LEFT.matcher(text);
        return new Text(Normalizer.normalize(text, Normalizer.Form.NFC), left.find() ? Optional.of(left.group()) : Optional.empty());
    }

    private static String accented(Matcher accent) {
        String sign = accent.group(1) == null ? accent.group(2) : accent.group(1);
        String letter = accent.group(3).equals("\\i") ? "i" : accent.group(3).equals("\\j") ? "j" : accent.group(3);
        String whole = letter + COMBINING.get(sign);
        int open = count(accent.group(), '{');
        int close = count(accent.group(), '}');
        return open > close ? "{" + whole : close > open ? whole + "}" : whole;
    }

    private static int count(String text, char sign) {
        return (int) text.chars().filter(c -> c == sign).count();
    }

    private interface Meaning {
        String of(Matcher found);
    }

    private static String replace(Pattern pattern, String text, Meaning meaning) {
        Matcher found = pattern.matcher(text);
        StringBuilder replaced = new StringBuilder();
        while (found.find()) {
            found.appendReplacement(replaced, Matcher.quoteReplacement(meaning.of(found)));
        }
        return found.appendTail(replaced).toString();
    }
}
