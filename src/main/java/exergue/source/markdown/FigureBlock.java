package exergue.source.markdown;

import exergue.finding.NearMiss;
import exergue.finding.Place;
import exergue.model.FigureKey;
import exergue.model.Prose;
import exergue.model.Written;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.SourceSpan;

/**
 * A block of lines between {@code ```figures} and {@code ```}: a key, a colon and what is meant by it, each on a line of its own.
 * A line that is indented goes on with the one before. Its caption is a paragraph before it, as for any table or picture.
 */
final class FigureBlock {

    static final String WORD = "figures";

    private static final Pattern LINE = Pattern.compile("([\\p{L}-]+)\\s*:\\s*(.*?)\\s*");

    private final Manuscript manuscript;
    private final Map<FigureKey, Integer> starts = new EnumMap<>(FigureKey.class);
    private final Map<FigureKey, Integer> ends = new EnumMap<>(FigureKey.class);
    private FigureKey last;

    private FigureBlock(Manuscript manuscript) {
        this.manuscript = manuscript;
    }

    static boolean isOne(FencedCodeBlock block) {
        return WORD.equals(block.getInfo() == null ? "" : block.getInfo().strip());
    }

    static Prose.Figures read(FencedCodeBlock block, Manuscript manuscript) {
        FigureBlock figures = new FigureBlock(manuscript);
        List<SourceSpan> lines = block.getSourceSpans();
        boolean closed = lines.size() > 1 && lines.size() > block.getLiteral().lines().count() + 1;
        for (SourceSpan line : lines.subList(1, closed ? lines.size() - 1 : lines.size())) {
            figures.line(line);
        }
        return figures.finished(InlineReader.place(block, manuscript));
    }

    private void line(SourceSpan span) {
        int start = span.getInputIndex();
        String text = manuscript.text().substring(start, start + span.getLength());
        if (text.isBlank()) {
            return;
        }
        Matcher line = LINE.matcher(text);
        Optional<FigureKey> key = line.matches() ? FigureKey.named(line.group(1)) : Optional.empty();
        if (key.isPresent()) {
            last = key.get();
            starts.put(last, start + line.start(2));
            ends.put(last, start + line.end(2));
        } else if (Character.isWhitespace(text.charAt(0)) && last != null) {
            ends.put(last, start + text.stripTrailing().length());
        } else if (line.matches()) {
            report(manuscript.at(start + line.start(1), line.group(1).length()), "“" + line.group(1) + "” is not a key of a block of figures.",
                    NearMiss.question(line.group(1), FigureKey.words())
                            + "The keys are: " + String.join(", ", FigureKey.words()) + ".");
        } else {
            report(manuscript.at(start, text.length()), "“" + text.strip() + "” is no line of a block of figures.",
                    "Write a key, a colon and what you mean, such as “show: weights”; begin a line that goes on with a space. The keys are: "
                            + String.join(", ", FigureKey.words()) + ".");
        }
    }

    private void report(Place place, String what, String remedy) {
        manuscript.report(MarkdownCodes.FIGURES_NOT_READ, place, what, remedy);
    }

    private Prose.Figures finished(Place place) {
        Map<FigureKey, Written<String>> said = new EnumMap<>(FigureKey.class);
        for (FigureKey key : FigureKey.values()) {
            int start = starts.getOrDefault(key, 0);
            int end = ends.getOrDefault(key, 0);
            if (end > start) {
                String value = manuscript.composed().apply(manuscript.text().substring(start, end).replaceAll("\\s*\\n\\s*", " "));
                said.put(key, new Written<>(value, manuscript.at(start, end - start)));
            }
        }
        return new Prose.Figures(said, Optional.empty(), place);
    }
}
