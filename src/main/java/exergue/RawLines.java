package exergue;

import exergue.finding.Finding.SafeEdit;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A file line by line, as it is saved: with its own line ends and byte order mark, all of which stay. */
final class RawLines {

    private static final String MARK = "\uFEFF";
    private static final Pattern LINE = Pattern.compile("[^\r\n]*(?:\r\n|\r|\n|$)");

    private final String mark;
    private final List<String> lines = new ArrayList<>();

    RawLines(byte[] file) {
        String text = new String(file, StandardCharsets.UTF_8);
        mark = text.startsWith(MARK) ? MARK : "";
        Matcher line = LINE.matcher(text).region(mark.length(), text.length());
        while (line.find() && !line.group().isEmpty()) {
            lines.add(line.group());
        }
    }

    /** Line by number, from 1, without its end; empty beyond the last. */
    String line(int number) {
        return number < 1 || number > lines.size() ? "" : withoutEnd(lines.get(number - 1));
    }

    int count() {
        return lines.size();
    }

    private static String withoutEnd(String line) {
        return line.replaceAll("[\r\n]+$", "");
    }

    /** Makes the edits of one line, from its end to its beginning; one that no longer fits, or runs into another, is left out. */
    List<SafeEdit> edit(int number, List<SafeEdit> edits) {
        List<SafeEdit> sorted = new ArrayList<>(edits);
        sorted.sort(Comparator.comparing((SafeEdit edit) -> edit.place().column()).reversed());
        List<SafeEdit> made = new ArrayList<>();
        int free = Integer.MAX_VALUE;
        for (SafeEdit edit : sorted) {
            String line = line(number);
            int points = line.codePointCount(0, line.length());
            int from = edit.place().column() - 1;
            int to = from + edit.place().length();
            if (from < 0 || to > points || to > free) {
                continue;
            }
            int start = line.offsetByCodePoints(0, from);
            int end = line.offsetByCodePoints(0, to);
            if (edit.was().isEmpty() || edit.was().equals(line.substring(start, end))) {
                lines.set(number - 1, line.substring(0, start) + edit.text() + line.substring(end) + lines.get(number - 1).substring(line.length()));
                free = from;
                made.add(edit);
            }
        }
        return made;
    }

    byte[] bytes() {
        return (mark + String.join("", lines)).getBytes(StandardCharsets.UTF_8);
    }
}
