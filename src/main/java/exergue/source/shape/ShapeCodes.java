package exergue.source.shape;

import static exergue.finding.Severity.ERROR;
import static exergue.finding.Severity.WARNING;

import exergue.finding.Code;
import java.util.List;

/** What can be wrong with keys and the values after them. */
public final class ShapeCodes {

    public static final Code UNKNOWN_KEY = new Code("unknown-key", ERROR, "A key is not known",
            "A value under a misspelt key would be left out of the book without a word.",
            "measurd:\n  weight: 3.87 g", "measured:\n  weight: 3.87 g");
    public static final Code MISSING_KEY = new Code("missing-key", ERROR, "A key that must be there is missing",
            "Without it the entry has no place in the book, or nothing to print where something belongs.",
            "id: lk-0042", "id: lk-0042\ntype: owl-drachm");
    public static final Code EMPTY_VALUE = new Code("empty-value", WARNING, "A key has no value",
            "A key without a value is read as if it were not there. Perhaps the value is still to come, or it begins "
                    + "with # and was taken for a comment.",
            "number: #12", "number: \"#12\"");
    public static final Code WRONG_SHAPE = new Code("wrong-shape", ERROR, "A value has the wrong shape",
            "Where one text is wanted a list cannot be printed, and the other way round.",
            "damage: chipped", "damage: [chipped]");
    public static final Code UNKNOWN_WORD = new Code("unknown-word", ERROR, "A word is not one of those that can stand here",
            "Some keys take one of a few words, because the book treats each of them differently.",
            "shape: sqare", "shape: square");
    public static final Code NOT_A_WHOLE_NUMBER = new Code("not-a-whole-number", ERROR, "A whole number is wanted",
            "Places in an order and catalogue numbers are counted, so they are written in digits only.",
            "order: third", "order: 3");
    public static final Code NOT_AN_ID = new Code("not-an-id", ERROR, "An id has a sign that ids do not have",
            "Ids name files, link entries to each other and become addresses in the PDF. Small letters, digits, "
                    + "hyphens and full stops are safe on every computer.",
            "id: LK 42", "id: lk-42");
    public static final Code ID_NOT_FILE_NAME = new Code("id-not-file-name", ERROR, "The id is not the name of the file",
            "An entry is found by its id; if the file is called otherwise, people and programs look in the wrong file.",
            "id: lk-0043 (in coins/lk-0042.yaml)", "id: lk-0042 (in coins/lk-0042.yaml)");
    public static final Code NO_STEP = new Code("no-step", ERROR, "A resolution is not one figure with its unit",
            "The smallest step of a balance or a rule decides how many figures of a reading can be trusted.",
            "resolution: fine", "resolution: 0.01 g");
    public static final Code NO_SCALE = new Code("no-scale", ERROR, "A scale is not two whole numbers",
            "A coin is printed as large as it is, or larger by a scale that the book states: what it measures on paper to what it "
                    + "measures in the hand.",
            "scale: twice", "scale: 2:1");
    public static final Code UNKNOWN_PART = new Code("unknown-part", ERROR, "A part of the book is not known",
            "A part is one of those Exergue makes itself, or the path of a chapter in the folder.",
            "front: [titel, contents]", "front: [title, contents]");
    public static final Code LANGUAGE_NOT_YET = new Code("language-not-yet", ERROR, "The language is not one Exergue can set",
            "Labels, the methods statement, decimal marks and quotation marks belong to a language. Exergue has English (en), "
                    + "French (fr), German (de) and Italian (it).",
            "language: deutsch", "language: de");
    private ShapeCodes() { }

    public static List<Code> all() {
        return List.of(UNKNOWN_KEY, MISSING_KEY, EMPTY_VALUE, WRONG_SHAPE, UNKNOWN_WORD, NOT_A_WHOLE_NUMBER, NOT_AN_ID,
                ID_NOT_FILE_NAME, NO_STEP, NO_SCALE, UNKNOWN_PART, LANGUAGE_NOT_YET);
    }
}
