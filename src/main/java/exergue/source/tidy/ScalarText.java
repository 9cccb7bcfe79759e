package exergue.source.tidy;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.nodes.NodeId;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.resolver.Resolver;

/** One text as YAML: without quotes where nothing needs them, else in single ones, else in double ones. */
final class ScalarText {

    private static final Resolver RESOLVER = new Resolver();
    private static final Pattern BAD_START = Pattern.compile("[,\\[\\]{}#&*!|>'\"%@`].*|[-?:](\\s.*|)|---.*|\\.\\.\\..*", Pattern.DOTALL);
    private static final Pattern BAD_INSIDE = Pattern.compile(":(\\s|$)|\\s#|[\\n\\t\\p{Cc}\\uFEFF\\u2028\\u2029\\u0085]|^\\s|\\s$");
    private static final Pattern BAD_IN_BRACKETS = Pattern.compile("[,\\[\\]{}]|:$");
    private static final Pattern TYPOGRAPHIC = Pattern.compile("[“”„‟«»‘’‚‹›].+[“”«»‘’‹›]");
    private static final Pattern UNPRINTABLE = Pattern.compile("[\\p{Cc}\\uFEFF\\u2028\\u2029&&[^\\n]]");

    private ScalarText() { }

    /** @param quoted whether the author has put it in quotes; a plain 12 and a '12' are not the same to other programs */
    static String of(String text, boolean quoted, boolean inBrackets) {
        if (text.isEmpty() && !quoted) {
            return ""; // nothing is written there
        }
        return isPlain(text, quoted) && !(inBrackets && needsQuotesInBrackets(text)) ? text : inQuotes(text);
    }

    /** Without a thought of brackets around it. */
    static boolean isPlain(String text, boolean quoted) {
        return !text.isEmpty() && !BAD_START.matcher(text).matches() && !BAD_INSIDE.matcher(text).find()
                && !(quoted && (RESOLVER.resolve(NodeId.scalar, text, true) != Tag.STR || TYPOGRAPHIC.matcher(text).matches()));
    }

    static boolean needsQuotesInBrackets(String text) {
        return BAD_IN_BRACKETS.matcher(text).find();
    }

    private static String inQuotes(String text) {
        boolean single = !text.contains("\n") && !UNPRINTABLE.matcher(text).find();
        boolean apostrophe = text.indexOf('\'') >= 0 && text.indexOf('"') < 0 && text.indexOf('\\') < 0;
        return single && !apostrophe ? "'" + text.replace("'", "''") + "'" : inDoubleQuotes(text);
    }

    private static String inDoubleQuotes(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.chars().forEach(c -> {
            switch (c) {
                case '"' -> quoted.append("\\\"");
                case '\\' -> quoted.append("\\\\");
                case '\n' -> quoted.append("\\n");
                case '\t' -> quoted.append("\\t");
                default -> quoted.append(UNPRINTABLE.matcher(Character.toString(c)).matches()
                        ? String.format(Locale.ROOT, "\\u%04X", c) : Character.toString((char) c));
            }
        });
        return quoted.append('"').toString();
    }

    /** Whether a text of several lines can stand under its key line by line. */
    static boolean canBeLiteral(String text) {
        return text.contains("\n") && !UNPRINTABLE.matcher(text).find() && !text.startsWith(" ") && !text.startsWith("\n") && !text.endsWith("\n\n")
                && !text.isBlank() && text.lines().noneMatch(line -> line.isBlank() && !line.isEmpty());
    }

    /** Whether a text can be broken over lines at its spaces. */
    static boolean canBeFolded(String text) {
        return !BAD_INSIDE.matcher(text.replace(": ", "").replace(" #", "").replaceAll(":$", "")).find() && !text.contains("  ")
                && text.contains(" ");
    }

    /** "|" for a text that ends with a line end, else "|-". */
    static String literalSign(String text) {
        return text.endsWith("\n") ? "|" : "|-";
    }

    static Optional<String> plainOrQuoted(String text, boolean quoted, boolean inBrackets) {
        return text.contains("\n") ? Optional.empty() : Optional.of(of(text, quoted, inBrackets));
    }
}
