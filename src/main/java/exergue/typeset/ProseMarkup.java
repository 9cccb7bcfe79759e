package exergue.typeset;

import exergue.files.Tree;
import exergue.finding.Finding;
import exergue.model.Caption;
import exergue.model.Inline;
import exergue.model.Prose;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Matcher;

/** Blocks of prose to XHTML: paragraphs, headings, quotations, lists, tables, pictures. */
final class ProseMarkup {

    /** Class of every table in prose. */
    static final String TABLE = "t";

    /** Rows of a table that is not broken over pages. */
    private static final int SHORT = 12;
    /** Letters that take no more than half of a line. */
    private static final int FEW_WORDS = 45;

    private static final int SIGNATURE = 40;

    private static final String AFTER_LABEL = "\u2002";

    private final Marks marks;
    private final Markup markup;
    private final Hyphens hyphens;
    private final Tree source;
    private final Consumer<Finding> findings;

    /** @param marks is told of every numbered table and figure */
    ProseMarkup(Marks marks, Markup markup, Hyphens hyphens, Tree source, Consumer<Finding> findings) {
        this.marks = marks;
        this.markup = markup;
        this.hyphens = hyphens;
        this.source = source;
        this.findings = findings;
    }

    /** @param above level of the heading that stands over the blocks; theirs follow it without a gap */
    String of(List<Prose> blocks, int above) {
        StringBuilder html = new StringBuilder();
        int level = above;
        Prose before = null;
        for (int i = 0; i < blocks.size(); i++) {
            Prose block = blocks.get(i);
            boolean kept = i + 1 < blocks.size() && blocks.get(i + 1) instanceof Prose.Note && fitsOnPage(block);
            if (kept) {
                html.append("<div class=\"kept\">\n");
            }
            if (block instanceof Prose.Heading heading) {
                level = Math.max(above + 1, Math.min(heading.level(), level + 1));
                html.append("<h").append(level).append('>').append(markup.of(heading.runs()))
                        .append("</h").append(level).append(">\n");
            } else {
                boolean indented = block instanceof Prose.Paragraph && before instanceof Prose.Paragraph;
                if (isSignature(block, before) && block == blocks.get(blocks.size() - 1)) {
                    html.append("<p class=\"signed\">").append(markup.of(((Prose.Paragraph) block).runs())).append("</p>\n");
                } else {
                    append(block, indented, html);
                }
            }
            if (block instanceof Prose.Note && before != null && fitsOnPage(before)) {
                html.append("</div>\n");
            }
            before = block;
        }
        return html.toString();
    }

    /** Charts and short tables, which are kept on one page with the note under them. */
    private static boolean fitsOnPage(Prose block) {
        return block instanceof Prose.Drawing || block instanceof Prose.Table table && table.rows().size() <= SHORT;
    }

    /** A few words in italics, alone after the text: who wrote it. */
    private static boolean isSignature(Prose block, Prose before) {
        return before instanceof Prose.Paragraph && block instanceof Prose.Paragraph paragraph
                && paragraph.runs().size() == 1 && paragraph.runs().get(0) instanceof Inline.Emphasis
                && Inline.plain(paragraph.runs()).length() <= SIGNATURE;
    }

    private void append(Prose block, boolean indented, StringBuilder html) {
        if (block instanceof Prose.Paragraph paragraph) {
            html.append(indented ? "<p class=\"i\">" : "<p>").append(markup.of(hyphens.in(paragraph.runs()))).append("</p>\n");
        } else if (block instanceof Prose.Quotation quotation) {
            html.append("<blockquote>").append(of(quotation.blocks(), 1)).append("</blockquote>\n");
        } else if (block instanceof Prose.Items items) {
            appendItems(items, html);
        } else if (block instanceof Prose.Table table) {
            appendTable(table, html);
        } else if (block instanceof Prose.Picture picture) {
            appendPicture(picture, html);
        } else if (block instanceof Prose.Rule) {
            html.append("<p class=\"pause\">*</p>\n");
        } else if (block instanceof Prose.Note note) {
            html.append("<p class=\"reckoned\">").append(markup.of(hyphens.in(note.runs()))).append("</p>\n");
        } else if (block instanceof Prose.Drawing drawing) {
            appendDrawing(drawing, html);
        }
    }

    private void appendItems(Prose.Items items, StringBuilder html) {
        String element = items.numbered() ? "ol" : "ul";
        html.append('<').append(element);
        if (items.numbered() && items.start() != 1) {
            html.append(" start=\"").append(items.start()).append('"');
        }
        html.append(">\n");
        for (List<Prose> item : items.items()) {
            html.append(items.numbered() ? "<li>" : "<li><p class=\"bullet\">•</p>").append(of(item, 1)).append("</li>\n");
        }
        html.append("</").append(element).append(">\n");
    }

    private void appendTable(Prose.Table table, StringBuilder html) {
        html.append("<table class=\"").append(TABLE).append(table.rows().size() <= SHORT ? " short" : "").append(inTwo(table))
                .append(table.caption().isPresent() ? " captioned\">" : "\">").append(caption(table, "caption" + id(table), "caption"))
                .append("<thead>");
        html.append("<tr>");
        appendRow(table.head(), table.align(), "th scope=\"col\"", "th", html);
        html.append("</thead><tbody>");
        for (int i = 0; i < table.rows().size(); i++) {
            html.append(i > 0 && i == table.rows().size() - 2 ? "<tr class=\"keep\">" : "<tr>");
            appendRow(table.rows().get(i), table.align(), "td", "td", html);
        }
        html.append("</tbody></table>\n");
    }

    /**
     * Of two columns the first keeps its few words on one line, however much stands in the second; and where that is a
     * figure, the table is narrow, since over the whole width the eye would lose the line between them.
     */
    private static String inTwo(Prose.Table table) {
        boolean two = table.align().size() == 2
                && table.rows().stream().allMatch(row -> Inline.plain(row.get(0)).length() <= FEW_WORDS);
        return !two ? "" : table.align().get(1).equals("right") ? " in-two narrow" : " in-two";
    }

    private String id(Prose.Captioned block) {
        return block.caption().flatMap(Caption::label).map(label -> " id=\""
                + Markup.escape(marks.add(Marks.Kind.CAPTION, label.anchor(), "", "")) + "\"").orElse("");
    }

    /** "Table 3. Coins by trench" */
    private String caption(Prose.Captioned block, String open, String close) {
        if (block.caption().isEmpty()) {
            return "";
        }
        List<Inline> runs = new ArrayList<>();
        block.caption().get().label().ifPresent(label -> runs.add(new Inline.Words(label.words() + "." + AFTER_LABEL)));
        runs.addAll(block.caption().get().runs());
        return "<" + open + " class=\"caption\">" + markup.of(runs) + "</" + close + ">";
    }

    private void appendRow(List<List<Inline>> cells, List<String> align, String open, String close,
                           StringBuilder html) {
        for (int i = 0; i < cells.size(); i++) {
            String side = i < align.size() ? align.get(i) : "left";
            html.append('<').append(open).append(" class=\"").append(Markup.escape(side)).append("\">")
                    .append(markup.of(cells.get(i))).append("</").append(close).append('>');
        }
        html.append("</tr>");
    }

    /** The drawing is the program's own; nothing of the author's is in it that is not escaped. */
    private void appendDrawing(Prose.Drawing drawing, StringBuilder html) {
        html.append("<div class=\"figure chart\"").append(id(drawing)).append('>').append(drawing.svg().replaceFirst("<svg ", "<svg alt=\""
                + Matcher.quoteReplacement(Markup.escape(drawing.alternative())) + "\" "));
        html.append(caption(drawing, "p", "p")).append("</div>\n");
    }

    private void appendPicture(Prose.Picture picture, StringBuilder html) {
        if (!source.has(picture.path())) {
            findings.accept(Finding.of(TypesetCodes.PICTURE_MISSING, picture.place(), "",
                    "There is no picture “" + picture.path() + "” in the source folder.",
                    "Put the file there, or correct its path; paths start at the source folder."));
            return;
        }
        List<String> parts = new ArrayList<>();
        parts.add("<img src=\"" + Markup.escape(TreeResources.address(picture.path())) + "\" alt=\""
                + Markup.escape(picture.alternative()) + "\""
                + ChapterPicture.width(source, picture.path()).map(pixels -> " width=\"" + pixels + "\"").orElse("") + "/>");
        parts.add(caption(picture, "p", "p"));
        html.append("<div class=\"figure\"").append(id(picture)).append('>').append(String.join("", parts)).append("</div>\n");
    }
}
