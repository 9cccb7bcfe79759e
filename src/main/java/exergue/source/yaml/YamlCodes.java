package exergue.source.yaml;

import static exergue.finding.Severity.ERROR;

import exergue.finding.Code;
import java.util.List;

/** What can be wrong with the way a file is written down, whatever it says. */
public final class YamlCodes {

    private static final String UNREADABLE =
            "The file cannot be understood from here on, so nothing in it can be printed until this is mended.";

    public static final Code TAB_INDENTATION = error("tab-indentation", "A line is indented with a tab",
            "Indentation shows what belongs to what, and only spaces can do that: a tab has no fixed width.",
            "measured:\n\tweight: 3.87 g", "measured:\n  weight: 3.87 g");
    public static final Code UNCLOSED_QUOTE = error("unclosed-quote", "A quotation mark is opened and not closed",
            UNREADABLE, "legend: \"ΚΟΡΙΝΘ", "legend: \"ΚΟΡΙΝΘ\"");
    public static final Code TYPOGRAPHIC_QUOTES = error("typographic-quotes", "A value stands in typographic quotation marks",
            "Only straight marks, ' or \", hold a value together. Curly ones, which word processors put in their place, "
                    + "are letters like any other and would be printed.",
            "number: “311”", "number: '311'");
    public static final Code TEXT_AFTER_QUOTE = error("text-after-quote", "Text goes on after the closing quotation mark",
            "A value in quotation marks ends with the second mark. An apostrophe inside single marks looks like one.",
            "description: 'Ruler's head'", "description: \"Ruler's head\"");
    public static final Code UNCLOSED_BRACKET = error("unclosed-bracket", "A bracket is opened and not closed",
            UNREADABLE, "damage: [chipped, pierced", "damage: [chipped, pierced]");
    public static final Code COLON_IN_VALUE = error("colon-in-value", "A colon and a space stand inside a value",
            "A colon followed by a space divides key from value. A second one on the line makes it unclear which.",
            "description: Head right: diadem", "description: \"Head right: diadem\"");
    public static final Code NO_SPACE_AFTER_COLON = error("no-space-after-colon", "A space is missing after the colon",
            "Without the space the line is one long word and not a key with its value.",
            "weight:3.87 g", "weight: 3.87 g");
    public static final Code RESERVED_SIGN = error("reserved-sign", "A value begins with a sign that YAML keeps for itself",
            "The signs @ ` % * & ! | > [ and { mean something to YAML at the beginning of a value.",
            "number: @12", "number: \"@12\"");
    public static final Code WRONG_INDENTATION = error("wrong-indentation", "A line is indented too much or too little",
            "Keys that belong together start in the same column; that is how the file says what belongs to what.",
            "measured:\n  by: bench\n   weight: 3.87 g", "measured:\n  by: bench\n  weight: 3.87 g");
    public static final Code BACKSLASH = error("backslash", "A backslash in double quotation marks starts no known sign",
            "Inside double quotation marks a backslash announces a special sign. Single marks take it as it is.",
            "number: \"A\\Q12\"", "number: 'A\\Q12'");
    public static final Code NOT_YAML = error("not-yaml", "The file cannot be understood here",
            UNREADABLE, "measured: }", "measured: {by: bench}");
    public static final Code ODD_KEY = error("odd-key", "A key is not a single word",
            "Brackets at the beginning of a line start a list or a block, not a key.", "[weight]: 3 g", "weight: 3 g");
    public static final Code SECOND_DOCUMENT = error("second-document", "A second document starts inside the file",
            "One file holds one entry. What stands after a line of three hyphens would be lost without a word.",
            "id: lk-1\n---\nid: lk-2", "id: lk-1");
    public static final Code ALIAS_REFUSED = error("alias-refused", "A value points to another value",
            "YAML can repeat a value by a sign. Then one slip changes many entries, and a small file can grow "
                    + "without end; so every entry says all it says itself.",
            "obverse: &head {description: Head right}", "obverse: {description: Head right}");
    public static final Code TAG_REFUSED = error("tag-refused", "A value carries a YAML type mark",
            "The key already says what kind of value is meant; a mark could only contradict it.",
            "number: !!int 12", "number: 12");
    public static final Code MERGE_KEY_REFUSED = error("merge-key-refused", "Keys are taken over from elsewhere",
            "An entry says all it says itself, so that it can be read and changed alone.",
            "<<: {shape: oval}", "shape: oval");
    public static final Code NESTED_TOO_DEEP = error("nested-too-deep", "Blocks are nested far too deep",
            "No entry needs more than five levels; a file with many more is damaged or meant to do harm.",
            "note: [[[[[[[[[[[[[[1]]]]]]]]]]]]]]", "note: \"1\"");
    public static final Code DUPLICATE_KEY = error("duplicate-key", "The same key stands twice",
            "Only one of the two values can be printed, and the file does not say which.",
            "weight: 3.87 g\nweight: 3.78 g", "weight: 3.87 g");

    private YamlCodes() { }

    private static Code error(String id, String title, String why, String faulty, String mended) {
        return new Code(id, ERROR, title, why, faulty, mended);
    }

    public static List<Code> all() {
        return List.of(TAB_INDENTATION, UNCLOSED_QUOTE, TYPOGRAPHIC_QUOTES, TEXT_AFTER_QUOTE, UNCLOSED_BRACKET, COLON_IN_VALUE,
                NO_SPACE_AFTER_COLON, RESERVED_SIGN, WRONG_INDENTATION, BACKSLASH, NOT_YAML, ODD_KEY, SECOND_DOCUMENT,
                ALIAS_REFUSED, TAG_REFUSED, MERGE_KEY_REFUSED, NESTED_TOO_DEEP, DUPLICATE_KEY);
    }
}
