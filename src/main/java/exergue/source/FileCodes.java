package exergue.source;

import static exergue.finding.Severity.ERROR;
import static exergue.finding.Severity.NOTE;
import static exergue.finding.Severity.WARNING;

import exergue.finding.Code;
import java.util.List;

/** What can be wrong with the files of a tree as a whole. */
final class FileCodes {

    static final Code NO_CATALOGUE_FILE = new Code("no-catalogue-file", ERROR, "The folder has no catalogue.yaml",
            "The catalogue's own file says what the book is called and which parts it has; every catalogue begins with it.",
            "coins/lk-0042.yaml (alone)", "catalogue.yaml\ncoins/lk-0042.yaml");
    static final Code FILE_NOT_READ = new Code("file-not-read", WARNING, "A file in the folder is not read",
            "An entry under a wrong name or in a wrong folder is missing from the book, and nobody would notice.",
            "coins/lk-0042.yml", "coins/lk-0042.yaml");
    static final Code CHAPTER_NOT_IN_BOOK = new Code("chapter-not-in-book", NOTE, "A chapter is not among the parts of the book",
            "Chapters are printed where the parts in catalogue.yaml name them. One that is not named may be a draft, or forgotten.",
            "body: [catalogue]", "body: [chapters/history.md, catalogue]");

    static final Code NOT_A_PICTURE = new Code("not-a-picture", ERROR, "A photograph is not a JPEG, PNG or TIFF file",
            "Only these kinds can be printed, TIFF only as the photograph of a coin. A camera’s raw file under a new name, a web page "
                    + "saved in place of a picture, or a copy that broke off is none of them.",
            "obverse: photographs/lk-42-obv.jpg (a raw file, renamed)", "obverse: photographs/lk-42-obv.jpg (saved as JPEG)");

    private FileCodes() { }

    static List<Code> all() {
        return List.of(NO_CATALOGUE_FILE, FILE_NOT_READ, CHAPTER_NOT_IN_BOOK, NOT_A_PICTURE);
    }
}
