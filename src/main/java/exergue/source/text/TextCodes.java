package exergue.source.text;

import static exergue.finding.Severity.ERROR;
import static exergue.finding.Severity.WARNING;

import exergue.finding.Code;
import java.util.List;

/** What can be wrong with a file before anything in it is understood. */
public final class TextCodes {

    public static final Code NOT_UTF_8 = new Code("not-utf-8", ERROR, "The file is not saved as UTF-8",
            "Every file is read as UTF-8, the encoding that holds all scripts at once. A file in another encoding "
                    + "would print wrong letters, most of all in legends and names.",
            "denomination: Obole d?couverte (saved as Windows-1252)",
            "denomination: Obole découverte (saved as UTF-8)");

    public static final Code FILE_TOO_LARGE = new Code("file-too-large", ERROR, "The file is too large for an entry",
            "An entry takes a few hundred characters. A file of more than a megabyte is nearly always a picture or a table "
                    + "under a wrong name, and reading it would only take time.",
            "coins/lk-0042.yaml (80 MB)", "coins/lk-0042.yaml (1 kB)");

    public static final Code CONTROL_CHARACTER = new Code("control-character", ERROR,
            "The file holds a character that cannot be seen or printed",
            "Such characters come from word processors and damaged files. They are invisible in an editor and would "
                    + "come out as a gap or a box in print.",
            "legend: ΚΟΡ\u2028ΙΝΘ", "legend: ΚΟΡΙΝΘ");

    public static final Code NOT_COMPOSED = new Code("not-composed", WARNING,
            "Letters and their accents are written apart",
            "Unicode can write é as one character or as e followed by an accent. They look alike but do not compare "
                    + "alike. Exergue joins them when it reads; the file itself is better mended once.",
            "name: Lykia\u0301", "name: Lykiá");

    public static final Code EMPTY_FILE = new Code("empty-file", ERROR, "The file is empty",
            "An entry that says nothing cannot be printed. Perhaps it was made and never filled in, or saving failed.",
            "(nothing)", "id: lk-0042\ntype: owl-drachm");

    private TextCodes() { }

    public static List<Code> all() {
        return List.of(NOT_UTF_8, FILE_TOO_LARGE, CONTROL_CHARACTER, NOT_COMPOSED, EMPTY_FILE);
    }
}
