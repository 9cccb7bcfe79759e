package exergue.source.markdown;

import exergue.finding.Place;
import exergue.model.Inline;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.ext.footnotes.FootnoteReference;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.SourceSpan;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;

/** The runs of one paragraph, heading or table cell: words, emphasis, links, with real dashes and quotation marks. */
final class InlineReader {

    private static final Pattern CROSS_REFERENCE = Pattern.compile("\\[(?:(coin|type|table|figure):([^\\]\\s]+)|work:([^\\]\\s,]+)(?:,\\s*([^\\]]*?)\\s*)?)\\]"
            + "|\\{([^{}]+?)\\s+of\\s+([^{}\\s]+)\\s*\\}");
    private static final Pattern NEARLY = Pattern.compile("(?i)\\[{1,2}(?:coin|type|table|figure|work)s?\\s*:[^\\]]*\\]{0,2}"
            + "|\\[{1,2}(?:coin|type|work)s?\\s+[^\\]\\s]*[-\\d][^\\]\\s]*\\]{1,2}");
    /** A call; not the label that a note begins with, which has a colon after it. */
    private static final Pattern FOOTNOTE = Pattern.compile("^\\[\\^[^\\]\\s]+\\]:|\\[\\^([^\\]\\s]+)\\]");
    private static final Pattern RANGE = Pattern.compile("(?<=\\d)-{1,2}(?=\\d)");
    private static final Pattern DASHES = Pattern.compile("(?<!-)---?(?!-)|(?<!\\.)\\.\\.\\.(?!\\.)");
    private static final Pattern WEB_ADDRESS = Pattern.compile("(?i)(https?://|mailto:).+");

    private final Manuscript manuscript;
    private final FootnoteCalls footnotes;
    private final List<Image> pictures = new ArrayList<>();
    private TypographicQuotes quotes;
    private int depth;
    private int inParagraph;
    private int inText;

    InlineReader(Manuscript manuscript, FootnoteCalls footnotes) {
        this.manuscript = manuscript;
        this.footnotes = footnotes;
    }

    List<Inline> read(Node paragraph) {
        StringBuilder words = new StringBuilder();
        collect(paragraph, words);
        quotes = new TypographicQuotes(manuscript.house().quotes(), words.toString());
        inText = paragraph.getSourceSpans().isEmpty() ? 0 : paragraph.getSourceSpans().get(0).getInputIndex();
        return runs(paragraph);
    }

    /** Pictures met on the way; a block places them after itself. */
    List<Image> pictures() {
        return pictures;
    }

    /** The words as they follow each other; what is not words keeps its length, as letters. */
    private static void collect(Node parent, StringBuilder words) {
        for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
            if (node instanceof Text text) {
                words.append(text.getLiteral());
            } else if (node instanceof Code code) {
                words.append("x".repeat(code.getLiteral().length()));
            } else if (node instanceof SoftLineBreak || node instanceof HardLineBreak) {
                words.append(' ');
            } else if (!(node instanceof Image)) {
                collect(node, words);
            }
        }
    }

    private List<Inline> runs(Node parent) {
        List<Inline> runs = new ArrayList<>();
        if (depth == MarkdownReader.DEEPEST) {
            MarkdownReader.reportTangled(manuscript, place(parent));
            return runs;
        }
        depth++;
        for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
            run(node, runs);
        }
        depth--;
        return runs;
    }

    private void run(Node node, List<Inline> runs) {
        if (node instanceof Text text) {
            look(text);
            text(text, runs);
        } else if (node instanceof Emphasis) {
            runs.add(new Inline.Emphasis(runs(node)));
        } else if (node instanceof StrongEmphasis) {
            runs.add(new Inline.Strong(runs(node)));
        } else if (node instanceof Link link) {
            link(link, runs);
        } else if (node instanceof Code code) {
            inParagraph += code.getLiteral().length();
            words(manuscript.composed().apply(code.getLiteral()), runs);
        } else if (node instanceof SoftLineBreak) {
            inParagraph++;
            words(" ", runs);
        } else if (node instanceof HardLineBreak) {
            inParagraph++;
            runs.add(new Inline.LineBreak());
        } else if (node instanceof Image image) {
            pictures.add(image);
        } else if (node instanceof FootnoteReference call) {
            footnotes.at(call.getLabel(), place(call)).ifPresent(runs::add);
        } else if (node instanceof HtmlInline html) {
            manuscript.report(MarkdownCodes.RAW_HTML, place(node), "“" + html.getLiteral() + "” is HTML, which the prose of a catalogue does not use.",
                    "Delete it. For italic write *words*, for bold **words**; a < that is meant as a sign is written \\<.");
        }
    }

    /** Where the words stand in the file just as they are printed. */
    private void look(Text text) {
        List<SourceSpan> spans = text.getSourceSpans();
        if (spans.size() == 1 && spans.get(0).getLength() == text.getLiteral().length()) {
            int begin = spans.get(0).getInputIndex();
            int done = 0;
            for (Matcher reference = CROSS_REFERENCE.matcher(text.getLiteral()); reference.find(); done = reference.end()) {
                Usage.look(manuscript, text.getLiteral().substring(done, reference.start()), begin + done);
            }
            Usage.look(manuscript, text.getLiteral().substring(done), begin + done);
        }
    }

    private void link(Link link, List<Inline> runs) {
        String address = link.getDestination();
        List<Inline> words = runs(link);
        if (WEB_ADDRESS.matcher(address).matches()) {
            runs.add(new Inline.Link(address, words));
            return;
        }
        runs.addAll(words);
        if (Inline.plain(words).startsWith("^")) {
            footnotes.at(Inline.plain(words).substring(1), place(link));
            return;
        }
        manuscript.report(MarkdownCodes.LINK_REFUSED, place(link), "The link to “" + address + "” leads to no web page.",
                "Begin the address with https://, or name another entry by [coin:id], [type:id] or [work:id].");
    }

    private void text(Text node, List<Inline> runs) {
        String literal = node.getLiteral();
        Matcher reference = CROSS_REFERENCE.matcher(literal);
        int done = 0;
        while (reference.find()) {
            if (isDoubled(literal, reference) || reference.group(5) != null && !manuscript.studies()) {
                continue;
            }
            between(literal.substring(done, reference.start()), runs);
            inParagraph += reference.end() - reference.start();
            runs.add(reference.group(5) == null ? crossReference(reference)
                    : new Inline.Figure(reference.group(5).strip(), reference.group(6), placeOf(reference.group())));
            done = reference.end();
        }
        between(literal.substring(done), runs);
    }

    /** Some note-taking programs write [[coin:lk-1]]; here that would print a number in brackets. */
    private static boolean isDoubled(String literal, Matcher reference) {
        return literal.startsWith("[", reference.start() - 1) && literal.startsWith("]", reference.end());
    }

    private void between(String literal, List<Inline> runs) {
        Matcher nearly = NEARLY.matcher(literal);
        while (nearly.find()) {
            manuscript.report(MarkdownCodes.CROSS_REFERENCE_NOT_READ, placeOf(nearly.group()),
                    "“" + nearly.group() + "” looks like a cross-reference and is printed as it stands.",
                    "Write it on one line, in small letters, in one pair of brackets, with a colon and no space: [coin:id], "
                            + "[type:id], [work:id] or [work:id, 45].");
        }
        OtherMarkdown.in(literal).forEach(mark -> manuscript.report(MarkdownCodes.UNSUPPORTED_MARKDOWN, placeOf(mark.text()),
                mark.what(), mark.remedy()));
        FOOTNOTE.matcher(literal).results().filter(found -> found.group(1) != null).forEach(call -> footnotes.at(call.group(1), placeOf(call.group())));
        words(typographic(literal), runs);
    }

    private Inline.CrossReference crossReference(Matcher reference) {
        Place place = placeOf(reference.group());
        if (reference.group(1) != null) {
            return new Inline.CrossReference(reference.group(1), reference.group(2), place);
        }
        String locator = reference.group(4) == null ? "" : reference.group(4);
        return new Inline.CrossReference("work", reference.group(3), ranged(manuscript.composed().apply(locator)), place);
    }

    /** Figures from–to have a dash between them: 12-14 is 12–14. */
    private static String ranged(String locator) {
        return RANGE.matcher(locator).replaceAll("\u2013");
    }

    /** Cross-references come in the order of the text, so each is the next one found from the last. */
    private Place placeOf(String reference) {
        int at = manuscript.text().indexOf(reference, inText);
        if (at < 0) {
            return manuscript.at(0, manuscript.text().length());
        }
        inText = at + reference.length();
        return manuscript.at(at, reference.length());
    }

    private String typographic(String words) {
        StringBuilder set = new StringBuilder(words.length());
        for (int i = 0; i < words.length(); i++) {
            String mark = quotes.mark(inParagraph + i);
            if (mark == null) {
                set.append(words.charAt(i));
            } else {
                set.append(mark);
            }
        }
        inParagraph += words.length();
        if (words.indexOf("--") < 0 && words.indexOf("...") < 0) {
            return set.toString();
        }
        return DASHES.matcher(set).replaceAll(found -> switch (found.group()) {
            case "--" -> "\u2013";
            case "---" -> "\u2014";
            default -> "\u2026";
        });
    }

    private void words(String words, List<Inline> runs) {
        if (words.isEmpty()) {
            return;
        }
        String composed = manuscript.composed().apply(words);
        int last = runs.size() - 1;
        if (last >= 0 && runs.get(last) instanceof Inline.Words before) {
            runs.set(last, new Inline.Words(before.text() + composed));
        } else {
            runs.add(new Inline.Words(composed));
        }
    }

    private Place place(Node node) {
        return place(node, manuscript);
    }

    static Place place(Node node, Manuscript manuscript) {
        if (node.getSourceSpans().isEmpty()) {
            return manuscript.at(0, manuscript.text().length());
        }
        SourceSpan span = node.getSourceSpans().get(0);
        return manuscript.at(span.getInputIndex(), span.getLength());
    }
}
