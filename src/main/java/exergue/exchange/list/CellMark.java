package exergue.exchange.list;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** What parts the cells of a list: the mark that gives the most rows of one length. */
final class CellMark {

    /** Where two do equally well, the sooner one: decimal commas and commas in texts are many, tabs and semicolons few. */
    private static final List<Character> MARKS = List.of('\t', ';', ',');
    private static final int LOOKED_AT = 200;

    private static final Pattern NAMED = Pattern.compile("\"?sep=([,;\t])\"?\n");

    private CellMark() { }

    static CSVFormat format(char mark) {
        return CSVFormat.RFC4180.builder().setDelimiter(mark).setIgnoreEmptyLines(false).get();
    }

    static String word(char mark) {
        return switch (mark) {
            case '\t' -> "tabs";
            case ';' -> "semicolons";
            default -> "commas";
        };
    }

    /** The one that a first line such as {@code sep=;} names; some spreadsheets write it and show no row for it. */
    static Optional<Character> named(String text) {
        Matcher line = NAMED.matcher(text);
        return line.lookingAt() ? Optional.of(line.group(1).charAt(0)) : Optional.empty();
    }

    static char of(String text) {
        char best = ',';
        long most = 0;
        for (char mark : MARKS) {
            long rows = rowsAlike(text, mark);
            if (rows > most) {
                most = rows;
                best = mark;
            }
        }
        return best;
    }

    /** How many of the first rows have as many cells as most of them, if that is more than one. */
    private static long rowsAlike(String text, char mark) {
        Map<Integer, Long> byLength = new HashMap<>();
        for (int length : lengths(text, mark)) {
            if (length > 1) {
                byLength.merge(length, 1L, Long::sum);
            }
        }
        return byLength.values().stream().mapToLong(Long::longValue).max().orElse(0);
    }

    private static List<Integer> lengths(String text, char mark) {
        List<Integer> lengths = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format(mark))) {
            for (CSVRecord record : parser) {
                lengths.add(record.size());
                if (lengths.size() == LOOKED_AT) {
                    break;
                }
            }
        } catch (IOException | UncheckedIOException | IllegalStateException e) {
            return lengths; // what could be read of it counts
        }
        return lengths;
    }
}
