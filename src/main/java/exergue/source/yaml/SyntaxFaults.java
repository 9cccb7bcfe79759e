package exergue.source.yaml;

import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.source.text.SourceText;
import java.util.Optional;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import java.util.regex.Pattern;

/** What the YAML library complains of, told to someone who knows coins and not YAML. */
final class SyntaxFaults {

    /** Spaces that are no break of a line, at the beginning of a value. */
    private static final Pattern OTHER_SPACES = Pattern.compile("^\\p{Zs}+");

    private final SourceText source;
    private final Mark mark;
    private final Mark context;
    private final String problem;
    private final String during;

    private SyntaxFaults(MarkedYAMLException e, SourceText source) {
        this.source = source;
        this.mark = e.getProblemMark() == null ? e.getContextMark() : e.getProblemMark();
        this.context = e.getContextMark() == null ? mark : e.getContextMark();
        this.problem = String.valueOf(e.getProblem());
        this.during = String.valueOf(e.getContext());
    }

    static Finding finding(MarkedYAMLException e, SourceText source) {
        return new SyntaxFaults(e, source).finding();
    }

    private Finding finding() {
        int tabLine = lineIndentedWithTab();
        if (tabLine > 0) {
            int column = source.line(tabLine).indexOf('\t') + 1;
            return fault(YamlCodes.TAB_INDENTATION, new Place(source.file(), tabLine, column, 1),
                    "This line is indented with a tab; only spaces count as indentation.",
                    "Replace the tab by spaces, two for each level; most editors can do it for the whole file.");
        }
        boolean escape = problem.contains("escape") || problem.contains("hexadecimal");
        Optional<Place> open = escape ? Optional.empty() : OpenQuote.before(mark.getLine() + 1, source);
        if (open.isPresent()) {
            return fault(YamlCodes.UNCLOSED_QUOTE, open.get(), "The quotation marks that open here are not closed on this line.",
                    "Put the same mark at the end of the value.");
        }
        if (during.contains("quoted scalar")) {
            return quoted(escape);
        }
        if (during.contains("alias") || during.contains("anchor") || during.contains("tag")
                || problem.contains("cannot start any token") || during.contains("directive")
                || during.contains("block scalar")) {
            return reserved();
        }
        if (during.contains("flow")) {
            return bracket();
        }
        if (problem.contains("could not find expected ':'")) {
            return noKey();
        }
        if (problem.contains("mapping values are not allowed")) {
            return keyInValue();
        }
        return structure();
    }

    private int lineIndentedWithTab() {
        int last = Math.min(source.lines(), mark.getLine() + 1);
        for (int number = 1; number <= last; number++) {
            String line = source.line(number);
            String indentation = line.substring(0, line.length() - line.stripLeading().length());
            if (indentation.indexOf('\t') >= 0 && !line.isBlank()) {
                return number;
            }
        }
        return 0;
    }

    /** Where the reader missed a member, it names the place of that and not of the bracket, which is the last before it. */
    private Finding bracket() {
        int line = context.getLine() + 1;
        String before = source.line(line);
        before = before.substring(0, before.offsetByCodePoints(0, Math.min(context.getColumn() + 1, before.codePointCount(0, before.length()))));
        while (line > 1 && lastBracket(before) < 0) {
            before = source.line(--line);
        }
        int bracket = lastBracket(before);
        Place place = bracket < 0 ? at(context, 1) : new Place(source.file(), line, before.codePointCount(0, bracket) + 1, 1);
        return fault(YamlCodes.UNCLOSED_BRACKET, place,
                "The bracket " + (bracket < 0 ? "" : "“" + before.charAt(bracket) + "” ")
                        + "that opens here is not closed, or a comma is missing in it.",
                "Close it, or put a comma between its members; if it belongs to the text, put the text in quotes.");
    }

    private static int lastBracket(String text) {
        return Math.max(text.lastIndexOf('['), text.lastIndexOf('{'));
    }

    private Finding quoted(boolean escape) {
        if (escape) {
            return fault(YamlCodes.BACKSLASH, at(mark, 1),
                    "The backslash before “" + charAt(mark) + "” stands in double quotation marks, where it means something else.",
                    "Use single quotation marks for this value, or write the backslash twice.");
        }
        return fault(YamlCodes.UNCLOSED_QUOTE, at(context, 1),
                "The quotation mark " + charAt(context) + " that opens here is never closed.",
                "Put the same mark at the end of the value.");
    }

    private Finding reserved() {
        Mark where = during.contains("next token") ? mark : context;
        String sign = charAt(where);
        String word = rest(where);
        return fault(YamlCodes.RESERVED_SIGN, at(where, 1),
                "A value cannot begin with “" + sign + "” unless it is in quotes.",
                "Put the value in quotation marks: " + (word.contains("\"") ? "'" + word + "'" : "\"" + word + "\"") + ".");
    }

    private Finding noKey() {
        String line = source.line(context.getLine() + 1);
        String word = line.strip();
        int colon = word.indexOf(':');
        if (colon > 0 && colon + 1 < word.length() && word.charAt(colon + 1) != ' ') {
            return noSpace(context.getLine() + 1);
        }
        return fault(YamlCodes.NOT_YAML, at(context, source.restOfLine(context.getLine() + 1, context.getColumn() + 1)),
                "“" + word + "” is neither a key with a value nor the rest of the line before.",
                "Put “key: ” before it; if it goes on from the line before, indent it more than that line's key.");
    }

    private Finding keyInValue() {
        String line = source.line(mark.getLine() + 1);
        int before = line.indexOf(": ");
        int here = line.offsetByCodePoints(0, Math.min(mark.getColumn(), line.codePointCount(0, line.length())));
        if (before >= 0 && before < here) {
            String key = line.substring(0, before).strip();
            String value = line.substring(before + 2).strip();
            return fault(YamlCodes.COLON_IN_VALUE, at(mark, 1),
                    "The value of “" + key + "” has a colon and a space in it: “" + value + "”.",
                    "Put the value in quotation marks: " + key + ": \"" + value.replace("\"", "\\\"") + "\".");
        }
        Finding missing = spaceMissingAbove();
        return missing != null ? missing : indentation();
    }

    /** A line such as {@code by:bench} swallows the next line's key; the fault is above, not where it shows. */
    private Finding spaceMissingAbove() {
        String above = source.line(mark.getLine());
        String word = above.strip();
        int colon = word.indexOf(':');
        if (colon <= 0 || colon + 1 >= word.length() || word.charAt(colon + 1) == ' ') {
            return null;
        }
        return noSpace(mark.getLine());
    }

    /** A no-break space after the colon looks like a space on every screen, so that one has to be told. */
    private Finding noSpace(int number) {
        String line = source.line(number);
        int colon = line.indexOf(':');
        String key = line.substring(0, colon).strip();
        String value = line.substring(colon + 1).strip();
        boolean other = Character.isSpaceChar(line.charAt(colon + 1));
        return fault(YamlCodes.NO_SPACE_AFTER_COLON, new Place(source.file(), number, line.codePointCount(0, colon) + 1, 1),
                other ? "After the colon of “" + key + "” stands a no-break space, which looks like a space and does not count as one."
                        : "“" + line.strip() + "” has no space after the colon.",
                (other ? "Delete it and type an ordinary space: “" : "Write “") + key + ": " + OTHER_SPACES.matcher(value).replaceFirst("") + "”.");
    }

    private Finding structure() {
        String line = source.line(mark.getLine() + 1);
        int here = line.offsetByCodePoints(0, Math.min(mark.getColumn(), line.codePointCount(0, line.length())));
        String before = line.substring(0, here).stripTrailing();
        if (before.endsWith("'") || before.endsWith("\"")) {
            return fault(YamlCodes.TEXT_AFTER_QUOTE, at(mark, source.restOfLine(mark.getLine() + 1, mark.getColumn() + 1)),
                    "The quotation marks are closed before “" + rest(mark) + "”, and nothing may follow them.",
                    "If the text holds this mark itself, use the other kind around the whole: double marks around an apostrophe.");
        }
        if (before.endsWith(":") && (rest(mark).equals("-") || rest(mark).equals("?"))) {
            return fault(YamlCodes.NOT_YAML, at(mark, 1), "“" + rest(mark) + "” cannot stand alone as a value.",
                    "If there is no figure or word to give, delete the line, or write the reason in quotation marks: \"missing: why\".");
        }
        return before.isBlank() || before.strip().equals("-") ? indentation()
                : fault(YamlCodes.NOT_YAML, at(mark, 1), "“" + rest(mark) + "” cannot stand here.",
                        "Compare the line with one that works; if the signs belong to the text, put the text in quotes.");
    }

    private Finding indentation() {
        String line = source.line(mark.getLine() + 1);
        int column = line.length() - line.stripLeading().length() + 1;
        return fault(YamlCodes.WRONG_INDENTATION,
                new Place(source.file(), mark.getLine() + 1, column, source.restOfLine(mark.getLine() + 1, column)),
                "“" + line.strip() + "” is not in line with the keys around it.",
                "Let keys that belong together start in the same column, two spaces further in than the key they belong to.");
    }

    private Place at(Mark where, int length) {
        return new Place(source.file(), where.getLine() + 1, where.getColumn() + 1, length);
    }

    private String charAt(Mark where) {
        String rest = rest(where);
        return rest.isEmpty() ? "" : Character.toString(rest.codePointAt(0));
    }

    private String rest(Mark where) {
        String line = source.line(where.getLine() + 1);
        int from = Math.min(where.getColumn(), line.codePointCount(0, line.length()));
        return line.substring(line.offsetByCodePoints(0, from)).strip();
    }

    private static Finding fault(Code code, Place place, String what, String remedy) {
        return Finding.of(code, place, "", what, remedy);
    }
}
