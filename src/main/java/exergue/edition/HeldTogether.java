package exergue.edition;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Which spaces hold what stands on both sides of them on one line: a figure and its unit, "no. 42", "pl. 3", "c. 420",
 * "430 BC", initials and surname, a name and its number, and marks that no line begins with. The text stays as it is:
 * the page does not break there, and a page for a browser gets a no-break space.
 *
 * <p>Sources: for value and unit, with "%" and "°C", the Interinstitutional Style Guide of the Publications Office of the
 * European Union, 6.4, alike in English, French, German and Italian; for the spaces before high marks in French, Lexique
 * des règles typographiques en usage à l’Imprimerie nationale, as quoted by S. Viguier, Ponctuation et espaces. For
 * numbers, names and abbreviations: common practice, no source.
 */
public final class HeldTogether {

    private static final Pattern UNIT = Pattern.compile(
            "(?:[kmµ]?g(?:/(?:cm|m)[³3])?|[kcmµ]?m|h|°C?|%|‰|ppi|dpi|in\\.|grn|gr\\.?)(?![\\p{L}\\p{N}]).*");
    private static final Pattern ERA = Pattern.compile("(?:BC|BCE|AD|CE|AH|a\\.C\\.|d\\.C\\.|av\\.|apr\\.)(?!\\p{L}).*");
    private static final Pattern THREE_DIGITS = Pattern.compile("\\d{3}(?!\\d).*");
    private static final Pattern GROUP = Pattern.compile("[−–-]?(?:\\d{1,3}|\\d{3},\\d+)");
    private static final Pattern NUMERAL = Pattern.compile("(?:\\d|[IVXLC]+(?!\\p{L})|[ivxl]+(?!\\p{L})).*");
    private static final Pattern REGNAL = Pattern.compile("[IVX]+(?![\\p{L}\\p{N}]).*");
    private static final Pattern INITIAL = Pattern.compile("(?:\\p{Lu}\\.|Ch\\.|Th\\.|Ph\\.)(?:-?\\p{Lu}\\.)*");
    private static final Pattern LETTER = Pattern.compile("\\p{L}\\.");
    private static final Pattern LETTERS = Pattern.compile("\\p{L}\\.(?:\\s?\\p{L}\\.|-\\p{L}\\.|\\P{L}.*)?");
    private static final Pattern NAME = Pattern.compile("\\p{Lu}[\\p{L}\\p{M}\\u00AD’]*\\p{Ll}");

    /** What counts something: the number follows. In lower case. */
    private static final Set<String> COUNTED = Set.of("no", "nos", "no.", "nos.", "n.", "nn.", "nr.", "nrn.", "n°", "nº", "n.os",
            "num.", "pl", "pl.", "pls", "pls.", "taf.", "tav.", "tavv.", "fig", "fig.", "figs", "figs.", "abb.", "p.", "pp.", "s.",
            "f.", "fol.", "fols", "col.", "cols", "vol.", "vols", "bd.", "bde.", "t.", "lot", "lots", "los", "cat.", "kat.", "tab.",
            "table", "tables", "tableau", "tableaux", "tabelle", "tabellen", "tabella", "figure", "figures", "figura",
            "abbildung", "plate", "plates", "planche", "tafel", "tavola", "chapter", "chapitre", "kapitel", "capitolo", "chap.",
            "kap.", "cap.", "page", "pages", "seite", "seiten", "pagina", "§", "§§", "c.", "ca", "ca.", "env.", "circa");

    private static final Set<String> TITLES = Set.of("Sir", "Dr", "Dr.", "Mr", "Mr.", "Mrs", "Mrs.", "Ms", "Ms.", "Miss", "Mme", "Mlle",
            "MM.", "Prof.", "Pr", "St", "St.", "Ste", "Hr.", "Frau", "Herr", "Herrn", "Dott.", "Sig.");

    /** After the space and alone, these stay with what is before it. */
    private static final String NEVER_FIRST = ";:!?»=×÷±≈<>–…";
    /** Before the space and alone, these stay with what comes after it. */
    private static final String NEVER_LAST = "×±≈<>«";

    private HeldTogether() { }

    /** @param space index of a space in the text; whether no line may end there */
    public static boolean at(String text, int space) {
        if (space == 0 || space + 1 >= text.length() || areWords(text.charAt(space - 1), text.charAt(space + 1))) {
            return false;
        }
        String after = text.substring(space + 1, endOfWord(text, space + 1));
        String before = withoutOpening(text.substring(startOfWord(text, space), space));
        if (after.isEmpty() || before.isEmpty()) {
            return false;
        }
        return opensNoLine(after) || NEVER_LAST.indexOf(before.charAt(before.length() - 1)) >= 0
                || hold(before, after, text, space + 1);
    }

    /** The text with no-break spaces where it holds together. */
    public static String noBreak(String text) {
        StringBuilder held = new StringBuilder(text);
        for (int space = text.indexOf(' '); space >= 0; space = text.indexOf(' ', space + 1)) {
            if (at(text, space)) {
                held.setCharAt(space, '\u00A0');
            }
        }
        return held.toString();
    }

    /** Most spaces are between letters of which the second is small, and no numeral begins with it. */
    private static boolean areWords(char before, char after) {
        return Character.isLetter(before) && Character.isLowerCase(after) && "ivxl".indexOf(after) < 0;
    }

    private static boolean hold(String before, String after, String text, int start) {
        char last = before.charAt(before.length() - 1);
        if (isFigure(last) || "†‡*".indexOf(last) >= 0 && before.chars().anyMatch(Character::isDigit)) {
            return unitOrEra(before, after, text, start);
        }
        if (NUMERAL.matcher(after).matches() && COUNTED.contains(before.toLowerCase(Locale.ROOT))) {
            return true;
        }
        boolean capital = Character.isUpperCase(after.codePointAt(0));
        if (last == '.') {
            return capital && (INITIAL.matcher(before).matches() || TITLES.contains(before) || isEra(before, after))
                    || LETTER.matcher(before).matches() && LETTERS.matcher(after).matches();
        }
        return capital && (TITLES.contains(before) || REGNAL.matcher(after).matches() && NAME.matcher(before).matches());
    }

    private static boolean unitOrEra(String before, String after, String text, int start) {
        return UNIT.matcher(after).matches() || ERA.matcher(after).matches()
                || text.startsWith("v. Chr", start) || text.startsWith("n. Chr", start)
                || THREE_DIGITS.matcher(after).matches() && GROUP.matcher(before).matches();
    }

    /** "av. J.-C.", "v. Chr." */
    private static boolean isEra(String before, String after) {
        return after.startsWith("J.-C") && (before.equals("av.") || before.equals("apr."))
                || after.startsWith("Chr") && (before.equals("v.") || before.equals("n."));
    }

    /** A mark alone, as in French before a colon and everywhere around a dash. */
    private static boolean opensNoLine(String after) {
        return NEVER_FIRST.indexOf(after.charAt(0)) >= 0 && after.codePoints().noneMatch(Character::isLetterOrDigit);
    }

    private static boolean isFigure(char letter) {
        return Character.isDigit(letter) || letter >= '¼' && letter <= '¾' || letter >= '⅐' && letter <= '⅞';
    }

    private static String withoutOpening(String word) {
        int start = 0;
        while (start < word.length() - 1 && "([“‘„‚\"".indexOf(word.charAt(start)) >= 0) {
            start++;
        }
        return word.substring(start);
    }

    private static int startOfWord(String text, int end) {
        int start = end;
        while (start > 0 && !isSpace(text.charAt(start - 1))) {
            start--;
        }
        return start;
    }

    private static int endOfWord(String text, int start) {
        int end = start;
        while (end < text.length() && !isSpace(text.charAt(end))) {
            end++;
        }
        return end;
    }

    private static boolean isSpace(char letter) {
        return Character.isWhitespace(letter) || letter == '\u00A0' || letter == '\u202F';
    }
}
