package exergue.source.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A file in which a Git merge has left what both sides had.
 *
 * @param regions in order
 * @param strays  numbers of lines that are marks of a merge and belong to no region: somebody has mended half of it
 */
public record Conflict(SourceText text, List<Region> regions, List<Integer> strays) {

    private static final String UPPER = "<<<<<<<";
    private static final String BASE = "|||||||";
    private static final String MIDDLE = "=======";
    private static final String LOWER = ">>>>>>>";

    /**
     * Two texts, one of which is to stay. All numbers are of lines, from 1.
     *
     * @param upper      of the mark {@code <<<<<<<}
     * @param base       of the mark {@code |||||||}, under which stands what both sides started from; 0 where there is none
     * @param middle     of the mark {@code =======}
     * @param lower      of the mark {@code >>>>>>>}
     * @param upperLabel what Git calls the upper side: "HEAD"
     */
    public record Region(int upper, int base, int middle, int lower, String upperLabel, String lowerLabel) {

        private boolean isMark(int line) {
            return line == upper || line == base || line == middle || line == lower;
        }

        private int endOfUpper() {
            return base > 0 ? base : middle;
        }

        private Optional<Which> side(int line) {
            if (line < upper || line > lower || isMark(line)) {
                return Optional.empty();
            }
            return Optional.of(line < endOfUpper() ? Which.UPPER : line > middle ? Which.LOWER : Which.BASE);
        }
    }

    /** Of the texts between the marks. */
    public enum Which { UPPER, BASE, LOWER }

    /** The whole file as one side has it. @param lines where each of its lines stands in the file, from 1 at index 0 */
    public record Version(SourceText text, List<Integer> lines) {

        public Version {
            lines = List.copyOf(lines);
        }

        /** The number in the file of a line of this version. */
        public int line(int number) {
            return number < 1 || number > lines.size() ? 0 : lines.get(number - 1);
        }
    }

    public Conflict {
        regions = List.copyOf(regions);
        strays = List.copyOf(strays);
    }

    /** Empty for nearly every file. */
    public static Optional<Conflict> in(SourceText text) {
        if (!text.text().contains(UPPER) && !text.text().contains(LOWER)) {
            return Optional.empty();
        }
        Conflict found = new Search(text).found();
        return found.regions.isEmpty() && found.strays.isEmpty() ? Optional.empty() : Optional.of(found);
    }

    /** True where every region says what both sides started from. */
    public boolean hasBase() {
        return !regions.isEmpty() && regions.stream().allMatch(region -> region.base() > 0);
    }

    /** The whole file, of each region only this text. */
    public Version version(Which which) {
        StringBuilder lines = new StringBuilder();
        List<Integer> numbers = new ArrayList<>();
        for (int line = 1; line <= text.lines(); line++) {
            int number = line;
            boolean marked = regions.stream().anyMatch(region -> region.isMark(number));
            boolean other = regions.stream().anyMatch(region -> region.side(number).filter(side -> side != which).isPresent());
            if (!marked && !other) {
                lines.append(text.line(line)).append('\n');
                numbers.add(line);
            }
        }
        return new Version(new SourceText(text.file(), lines.toString()), numbers);
    }

    /** The lines of one text of a region, joined by spaces. */
    public String words(Region region, Which which) {
        List<String> words = new ArrayList<>();
        for (int line = region.upper(); line <= region.lower(); line++) {
            if (region.side(line).filter(side -> side == which).isPresent() && !text.line(line).isBlank()) {
                words.add(text.line(line).strip());
            }
        }
        return String.join(" ", words);
    }

    /** One walk through the lines. */
    private static final class Search {

        private final SourceText text;
        private final List<Region> regions = new ArrayList<>();
        private final List<Integer> strays = new ArrayList<>();
        private int upper;
        private int base;
        private int middle;

        Search(SourceText text) {
            this.text = text;
        }

        Conflict found() {
            for (int line = 1; line <= text.lines(); line++) {
                look(line);
            }
            if (upper > 0) {
                strays.add(upper);
            }
            return new Conflict(text, regions, strays);
        }

        private void look(int line) {
            if (is(UPPER, line)) {
                if (upper > 0) {
                    strays.add(upper);
                }
                upper = line;
                base = 0;
                middle = 0;
            } else if (is(BASE, line) && upper > 0 && middle == 0) {
                base = line;
            } else if (is(MIDDLE, line) && upper > 0 && middle == 0) {
                middle = line;
            } else if (is(LOWER, line) && middle > 0) {
                regions.add(new Region(upper, base, middle, line, label(upper), label(line)));
                upper = 0;
                middle = 0;
            } else if (is(LOWER, line) || is(BASE, line)) {
                strays.add(line);
            }
        }

        private boolean is(String mark, int line) {
            String there = text.line(line);
            return there.startsWith(mark) && (there.length() == mark.length() || there.charAt(mark.length()) == ' ');
        }

        private String label(int line) {
            return text.line(line).substring(UPPER.length()).strip();
        }
    }
}
