package exergue.source.heldback;

import exergue.files.Tree;
import exergue.source.keys.FileKind;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The lines of find-spots.yaml as they may be shown, for what a service prints can often be read by anybody. Exact places
 * are held back, whether or not they may be printed, and so is everything that is not known to be none: the file may be
 * broken, half merged, or have a key misspelt. Lines are looked at as they are written, since there may be no YAML to read.
 *
 * @param shown  each line, with a note in place of what is held back
 * @param hidden what is held back of each line, if anything
 */
public record HeldBack(List<String> shown, List<String> hidden) {

    /** That holds exact places. */
    public static final String FILE = FileKind.FIND_SPOTS.where();
    private static final long TOO_LARGE_TO_SHOW = 16L << 20;

    static final String NOTE = "… (not shown)";

    /** What stands after these keys is printed in the book, or says nothing of a place. */
    private static final Set<String> SAFE = Set.of("name", "kind", "closed", "exact-may-be-printed", "compared-with", "title", "periods",
            "period", "coins", "others");
    private static final Pattern KEY = Pattern.compile("\\G(?:\"([^\"]*)\"|'([^']*)'|([^\\s:,{}\\[\\]\"'#][^:,{}\\[\\]#]*?))\\s*:(?=\\s|$)\\s*");
    private static final Pattern STRUCTURE = Pattern.compile("\\G[\\s{}\\[\\],-]*");
    /** “exact”, or what may have been meant for it, wherever it stands: nothing after it is shown. */
    private static final Pattern EXACT = Pattern.compile("(?i:ex[a-z]*t)[\"']?\\s*:\\s*");
    private static final Pattern ID = Pattern.compile("[\\p{L}\\p{M}\\p{N}._-]+");
    private static final Pattern QUOTED = Pattern.compile("\\G(?:\"[^\"]*\"|'[^']*')\\s*");
    private static final Pattern FLOW_VALUE = Pattern.compile("\\G[^,{}#]*");
    private static final Pattern BLOCK_VALUE = Pattern.compile("\\G(?:(?!\\s#).)*");
    private static final Pattern MARK_OF_A_MERGE = Pattern.compile("(<{7}|={7}|>{7}|\\|{7}).*");

    public HeldBack {
        shown = List.copyOf(shown);
        hidden = List.copyOf(hidden);
    }

    public static HeldBack in(List<String> lines) {
        return new Walk().through(lines);
    }

    /** Any file of the source as it stands, nothing held back; no lines where it is not there or too large. */
    public static List<String> asWritten(Tree tree, String path) {
        try {
            if (!tree.has(path) || tree.size(path) > TOO_LARGE_TO_SHOW) {
                return List.of();
            }
            String text = new String(tree.read(path), StandardCharsets.UTF_8);
            return List.of((text.startsWith("\uFEFF") ? text.substring(1) : text).split("\r\n|\r|\n", -1));
        } catch (IOException e) {
            return List.of(); // the finding itself still says what is wrong
        }
    }

    /** How many characters of a line are shown, the note not counted. @param line from 1 */
    int visible(int line) {
        String text = line < 1 || line > shown.size() ? "" : shown.get(line - 1);
        return text.endsWith(NOTE) ? text.length() - NOTE.length() : Integer.MAX_VALUE;
    }

    /** From the first line to the last. */
    private static final class Walk {

        private final List<String> shown = new ArrayList<>();
        private final List<String> hidden = new ArrayList<>();
        /** Indentation of a key that is not shown, whose lines below it are not either; -1 where there is none. */
        private int below = -1;
        private int braces;

        HeldBack through(List<String> lines) {
            for (String line : lines) {
                int end = line.isBlank() || MARK_OF_A_MERGE.matcher(line).matches() ? line.length() : visible(line);
                shown.add(end < line.length() ? line.substring(0, end) + NOTE : line);
                if (end < line.length()) {
                    hidden.add(line.substring(end).strip());
                }
            }
            return new HeldBack(shown, hidden);
        }

        private int visible(String line) {
            int indent = line.length() - line.stripLeading().length();
            if (below >= 0 && indent > below) {
                return indent;
            }
            below = -1;
            braces = indent == 0 ? 0 : braces;
            Matcher exact = EXACT.matcher(line);
            if (!exact.find()) {
                return known(line, indent);
            }
            int before = known(line.substring(0, exact.start()), indent);
            below = indent;
            return before == exact.start() ? exact.end() : before;
        }

        /** Up to where all is known to be no place. */
        private int known(String line, int indent) {
            int at = 0;
            while (at < line.length()) {
                int from = after(STRUCTURE, line, at);
                braces = Math.max(0, braces + depth(line.substring(at, from)));
                Matcher key = KEY.matcher(line);
                if (from == line.length() || !key.find(from)) {
                    return from;
                }
                at = value(line, from, key, indent);
                if (at < 0) {
                    return -at;
                }
            }
            return at;
        }

        /** Where what follows the value begins; where the value is not shown, its beginning as a negative number. */
        private int value(String line, int from, Matcher key, int indent) {
            String name = key.group(1) != null ? key.group(1) : key.group(2) != null ? key.group(2) : key.group(3);
            boolean isId = from == 0 && ID.matcher(name).matches();
            int start = key.end();
            boolean nothing = start == line.length();
            boolean opens = !nothing && "{[".indexOf(line.charAt(start)) >= 0;
            if (SAFE.contains(name)) {
                return opens ? start : after(braces > 0 ? FLOW_VALUE : BLOCK_VALUE, line, after(QUOTED, line, start));
            }
            if (isId && (nothing || opens)) {
                return start;
            }
            below = indent;
            return nothing ? line.length() : -start;
        }

        private static int depth(String structure) {
            return (int) (structure.chars().filter(c -> c == '{').count() - structure.chars().filter(c -> c == '}').count());
        }

        private static int after(Pattern pattern, String line, int from) {
            Matcher matcher = pattern.matcher(line);
            return matcher.find(from) ? matcher.end() : from;
        }
    }
}
