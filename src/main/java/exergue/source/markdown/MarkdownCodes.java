package exergue.source.markdown;

import static exergue.finding.Severity.ERROR;
import static exergue.finding.Severity.NOTE;
import static exergue.finding.Severity.WARNING;

import exergue.finding.Code;
import java.util.ArrayList;
import java.util.List;

/** What can be wrong with prose. */
public final class MarkdownCodes {

    public static final Code RAW_HTML = new Code("raw-html", ERROR, "HTML stands in the prose",
            "The look of the book is decided in its templates; HTML in an entry would pass them by.",
            "a <b>diademed</b> head", "a **diademed** head");
    public static final Code UNSUPPORTED_MARKDOWN = new Code("unsupported-markdown", WARNING,
            "A form of Markdown that the book does not have",
            "It is printed as plain words, which may not be what was meant.",
            "    four spaces before a paragraph", "four spaces before a paragraph");
    public static final Code LINK_REFUSED = new Code("link-refused", WARNING, "A link leads to no address on the internet",
            "The words are printed without the link. Links in the PDF lead to web pages or e-mail addresses; other "
                    + "entries are named by [coin:id], [type:id] or [work:id].",
            "[the type](types/owl-drachm.yaml)", "[type:owl-drachm]");
    public static final Code CROSS_REFERENCE_NOT_READ = new Code("cross-reference-not-read", WARNING,
            "Something looks like a cross-reference and is none",
            "A cross-reference stands on one line, with no space after the colon. Otherwise it would be printed as it stands, "
                    + "brackets and all.",
            "as in [coin: lk-0042]", "as in [coin:lk-0042]");
    public static final Code FIGURES_NOT_READ = new Code("figures-not-read", ERROR,
            "A line of a block of figures is not understood",
            "In a block of figures stand keys with what is meant by them, each on a line of its own. A line that cannot be read "
                    + "would leave something out of the table or chart without a word.",
            "shows: weights\nof: drachms", "show: weights\nof: drachms");
    public static final Code HEADING_SKIPS = new Code("heading-skips", WARNING, "A heading skips a level",
            "Readers who hear the book and the list of contents rely on the order of the levels.",
            "# The mint\n### Its dies", "# The mint\n## Its dies");
    public static final Code CHAPTER_WITHOUT_TITLE = new Code("chapter-without-title", ERROR,
            "A chapter does not begin with its title",
            "The title heads the chapter and stands in the list of contents.",
            "The mint opened late.", "# The mint\n\nThe mint opened late.");
    public static final Code SECOND_TITLE = new Code("second-title", WARNING, "A chapter has a second title",
            "A heading with one # is the title of the chapter, and a chapter has one. The second is set as a section.",
            "# The mint\n# Its dies", "# The mint\n## Its dies");
    public static final Code PICTURE_WITHOUT_WORDS = new Code("picture-without-words", NOTE,
            "A picture has no words for readers who cannot see it",
            "The PDF is read aloud to some of its readers; the words in the square brackets are what they hear.",
            "![](photographs/site.jpg)", "![The harbour from the north](photographs/site.jpg)");
    public static final Code TANGLED_PROSE = new Code("tangled-prose", ERROR, "Emphasis or quotations are nested without end",
            "No reader could follow it, and the program should not try.", "> > > > > > > > > > > > > > a", "> a");

    public static final Code FOOTNOTE_WITHOUT_TEXT = new Code("footnote-without-text", ERROR, "A footnote is called that has no text",
            "The number would stand in the line and lead to nothing. The text stands in a paragraph of its own that begins with "
                    + "the same label and a colon.", "found in 1909.[^1]", "found in 1909.[^1]\n\n[^1]: Not in 1908.");
    public static final Code FOOTNOTE_NEVER_CALLED = new Code("footnote-never-called", WARNING, "A footnote is never called",
            "A note is printed on the page where it is called, and numbered in the order of the calls; one that is not called "
                    + "cannot be printed.", "found in 1909.\n\n[^1]: Not in 1908.", "found in 1909.[^1]\n\n[^1]: Not in 1908.");
    public static final Code FOOTNOTE_CALLED_TWICE = new Code("footnote-called-twice", ERROR, "A footnote is called twice",
            "A note stands at the foot of the page where it is called, so each call has a note of its own.",
            "found in 1909.[^1] Lost since.[^1]", "found in 1909.[^1] Lost since.[^2]");

    public static final Code CAPTION_ALONE = new Code("caption-alone", WARNING, "A caption stands at no table or picture",
            "A paragraph that begins with “Table:” or “Figure:” is the caption of the table or picture directly after it, and is "
                    + "printed with its number. Elsewhere it is printed as a plain paragraph.",
            "Table: Coins by trench\n\nThe trenches are treated first.", "The trenches are treated first.\n\nTable: Coins by trench\n\n| Trench | Coins |\n| --- | --: |\n| A | 5 |");
    public static final Code CAPTION_ID = new Code("caption-id", ERROR, "The id in a caption has a sign that ids do not have",
            "Texts refer to the table or figure by this id, and it becomes part of an address.",
            "Table [Trench A]: Coins by level", "Table [trench-a]: Coins by level");

    public static final Code PARAGRAPH_TOO_LONG = new Code("paragraph-too-long", ERROR, "A paragraph has no end",
            "A paragraph ends with an empty line. One of many pages has lost its empty lines, or is no prose at all, "
                    + "and could keep the program busy for hours.", "(ten pages without an empty line)", "(an empty line after each paragraph)");

    private MarkdownCodes() { }

    public static List<Code> all() {
        List<Code> all = new ArrayList<>(Usage.codes());
        all.addAll(List.of(RAW_HTML, UNSUPPORTED_MARKDOWN, LINK_REFUSED, CROSS_REFERENCE_NOT_READ, FIGURES_NOT_READ, HEADING_SKIPS, CHAPTER_WITHOUT_TITLE, SECOND_TITLE,
                PICTURE_WITHOUT_WORDS, TANGLED_PROSE, FOOTNOTE_WITHOUT_TEXT, FOOTNOTE_NEVER_CALLED, FOOTNOTE_CALLED_TWICE,
                CAPTION_ALONE, CAPTION_ID, PARAGRAPH_TOO_LONG));
        return List.copyOf(all);
    }
}
