package exergue.typeset;

import exergue.finding.Code;
import exergue.finding.Severity;
import java.util.List;

/** What can be wrong when pages are made. */
public final class TypesetCodes {

    public static final Code MISSING_LETTER = new Code("missing-letter", Severity.ERROR,
            "The book's face lacks a letter",
            "A letter or mark that the face does not have cannot be printed; it would leave a gap or a wrong mark in "
                    + "the book. The text has to be written with letters the face has.",
            "legend: ☧ ΛΥΚΑΙΩΝ", "legend: ΛΥΚΑΙΩΝ");

    public static final Code PICTURE_MISSING = new Code("picture-missing", Severity.ERROR,
            "A picture is not there",
            "The book names a photograph or figure that is not in the source folder, so that its place would stay "
                    + "empty.",
            "![The plan](figures/plam.png)", "![The plan](figures/plan.png)");

    public static final Code PICTURE_UNREADABLE = new Code("picture-unreadable", Severity.ERROR,
            "A picture cannot be read",
            "Photographs are printed from JPEG or PNG files. A file of another kind, a damaged file or one over "
                    + "128 MB cannot be printed.",
            "photograph: {obverse: photographs/lk-1.tif}", "photograph: {obverse: photographs/lk-1.jpg}");

    public static final Code TEMPLATE_FAULT = new Code("template-fault", Severity.ERROR,
            "A page template cannot be filled",
            "The page templates say how the book is laid out. With a fault in one of them no page can be made.",
            "<p>${entry.numbers</p>", "<p>${entry.numbers}</p>");

    public static final Code TEMPLATE_MARKUP = new Code("template-markup", Severity.ERROR,
            "A page template makes markup that does not close",
            "What the templates make must be well-formed XHTML: every element closed, in the right order, and no "
                    + "named entities such as &nbsp; (write &#160;).",
            "<p>${entry.numbers}<br></p>", "<p>${entry.numbers}<br/></p>");

    public static final Code OUTSIDE_RESOURCE = new Code("outside-resource", Severity.ERROR,
            "A page asks for something outside the source folder",
            "Pages are made only from files of the source folder and of its templates. Nothing is fetched from "
                    + "elsewhere on the disk or from the network, so that a book can be made again anywhere and a "
                    + "source from someone else can be set without risk.",
            "@import url(http://example.org/page.css);", "@import url(page.css);");

    public static final Code TOO_WIDE = new Code("too-wide", Severity.WARNING,
            "Something is wider than its column",
            "A word or figure that is wider than its column runs into what stands beside it.",
            "denomination: an-endless-word-without-a-break", "denomination: an endless word without a break");

    public static final Code ENGINE_REMARK = new Code("page-engine-remark", Severity.WARNING,
            "The page engine remarked on a template or style sheet",
            "The engine that makes the pages met something in a template or style sheet that it does not understand "
                    + "and left it out.",
            "p { line-hight: 13pt }", "p { line-height: 13pt }");

    public static final Code PAGES_UNSETTLED = new Code("pages-unsettled", Severity.WARNING,
            "Page numbers in the text do not settle",
            "Page numbers in the text are known once the book is set, and printed they may push a line to the next page. "
                    + "The book is set again until all of them are right; very rarely two states follow each other for ever.",
            "indexes: {cross-references: numbers and pages}", "indexes: {cross-references: numbers}");

    private TypesetCodes() { }

    /** Every code of this stage. */
    public static List<Code> all() {
        return List.of(MISSING_LETTER, PICTURE_MISSING, PICTURE_UNREADABLE, TEMPLATE_FAULT, TEMPLATE_MARKUP,
                OUTSIDE_RESOURCE, TOO_WIDE, ENGINE_REMARK, PAGES_UNSETTLED);
    }
}
