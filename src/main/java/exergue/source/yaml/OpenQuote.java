package exergue.source.yaml;

import exergue.finding.Place;
import exergue.source.text.SourceText;
import java.util.Optional;

/**
 * Looks for the quotation mark that somebody forgot to close. It then runs on to the next mark of its kind, lines further
 * down, and what stands there seems to be at fault.
 */
final class OpenQuote {

    private final SourceText source;

    private OpenQuote(SourceText source) {
        this.source = source;
    }

    /**
     * The mark that opens a value, is not closed on its line, and meets its fellow on the line where reading stopped, or never.
     *
     * @param stopped line from 1
     */
    static Optional<Place> before(int stopped, SourceText source) {
        OpenQuote look = new OpenQuote(source);
        int line = 1;
        while (line < stopped) {
            int open = openAtEnd(source.line(line));
            if (open < 0) {
                line++;
                continue;
            }
            int closed = look.lineWithMark(source.line(line).charAt(open), line + 1);
            if (closed >= stopped) {
                return Optional.of(new Place(source.file(), line, source.line(line).codePointCount(0, open) + 1, 1));
            }
            line = closed + 1;
        }
        return Optional.empty();
    }

    private int lineWithMark(char mark, int from) {
        int line = from;
        while (line <= source.lines() && source.line(line).indexOf(mark) < 0) {
            line++;
        }
        return line;
    }

    /** Where the mark stands that a value of this line opens with and that is open at its end; -1 where there is none. */
    private static int openAtEnd(String line) {
        int open = -1;
        char last = ':';
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (open >= 0) {
                boolean closes = c == line.charAt(open);
                i += c == '\\' && line.charAt(open) == '"' ? 1 : 0;
                open = closes ? -1 : open;
                last = closes ? c : last;
            } else if (c == '#' && (i == 0 || line.charAt(i - 1) == ' ')) {
                return -1;
            } else if ((c == '"' || c == '\'') && ":-,[{".indexOf(last) >= 0) {
                open = i;
            } else if (c != ' ') {
                last = c;
            }
        }
        return open;
    }
}
