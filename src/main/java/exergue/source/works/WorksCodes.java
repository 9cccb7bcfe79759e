package exergue.source.works;

import static exergue.finding.Severity.ERROR;
import static exergue.finding.Severity.WARNING;

import exergue.finding.Code;
import java.util.List;

/** What can be wrong with works.json and works.bib, and between them and works.yaml. */
public final class WorksCodes {

    public static final Code NOT_JSON = new Code("not-json", ERROR, "The file is not CSL-JSON",
            "works.json is a list of works as reference managers export it: square brackets around all, braces around each "
                    + "work, commas between. Where the signs do not fit, nothing of the file can be trusted.",
            "[{\"id\": \"hallam\" \"type\": \"book\"}]", "[{\"id\": \"hallam\", \"type\": \"book\"}]");

    public static final Code NOT_BIBTEX = new Code("not-bibtex", ERROR, "The file is not BibTeX",
            "In works.bib each work begins with @, its kind and a brace, and ends with the brace that closes it. Where the "
                    + "signs do not fit, it cannot be known where one work ends and the next begins.",
            "@book{hallam, title = {Coins of the Coast}, year = 1931", "@book{hallam, title = {Coins of the Coast}, year = 1931}");

    public static final Code LATEX_NOT_READ = new Code("latex-not-read", WARNING, "A LaTeX command cannot be read",
            "Accents and dashes of LaTeX are read as the letters they stand for. Other commands have no meaning in this "
                    + "book, and would be printed as they stand.",
            "title = {The \\mint of Lampron}", "title = {The mint of Lampron}");

    public static final Code WORK_WITHOUT_ID = new Code("work-without-id", ERROR, "A work has no id",
            "References name a work by its id. One without cannot be cited.",
            "[{\"type\": \"book\", \"title\": \"Coins of the Coast\"}]",
            "[{\"id\": \"hallam\", \"type\": \"book\", \"title\": \"Coins of the Coast\"}]");

    public static final Code WORK_WITHOUT_TITLE = new Code("work-without-title", ERROR, "A work has no title",
            "A reader cannot find a work without its title.", "@book{hallam, author = {R. Hallam}}",
            "@book{hallam, author = {R. Hallam}, title = {Coins of the Coast}}");

    public static final Code WORK_WITHOUT_SIGN = new Code("work-without-sign", WARNING, "A work has no sign",
            "References print the sign of a work, its abbreviation. A file from a reference manager has one only where "
                    + "somebody has written it. Until there is one, author and year are printed.",
            "@book{hallam, author = {R. Hallam}, title = {Coins of the Coast}, year = 1931}",
            "@book{hallam, shorthand = {Hallam}, author = {R. Hallam}, title = {Coins of the Coast}, year = 1931}");

    public static final Code WORK_DECLARED_TWICE = new Code("work-declared-twice", ERROR, "A work is declared twice",
            "Two works with one id: a reference to it could mean either.",
            "works.bib: @book{hallam, title = {Coins of the Coast}}\nworks.yaml: hallam: {title: The Other Coast}",
            "works.bib: @book{hallam, title = {Coins of the Coast}}\nworks.yaml: hallam: {sign: Hallam}");

    private WorksCodes() { }

    public static List<Code> all() {
        return List.of(NOT_JSON, NOT_BIBTEX, LATEX_NOT_READ, WORK_WITHOUT_ID, WORK_WITHOUT_TITLE, WORK_WITHOUT_SIGN,
                WORK_DECLARED_TWICE);
    }
}
