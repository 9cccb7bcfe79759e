package exergue.source.markdown;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Marks that mean something in other kinds of Markdown and would be printed here as they stand. */
final class OtherMarkdown {

    /** Struck out or marked words; raised and lowered ones, as in H~2~O. */
    private static final Pattern MARKS = Pattern.compile("~~[^~]+~~|==[^=]+==|(?<=\\w)~[^~\\s]{1,8}~|(?<=\\w)\\^[^^\\s]{1,8}\\^");

    private OtherMarkdown() { }

    /** @param text as written */
    record Mark(String text, String what, String remedy) { }

    /** In the order of the text. */
    static List<Mark> in(String words) {
        List<Mark> marks = new ArrayList<>();
        Matcher mark = MARKS.matcher(words);
        while (mark.find()) {
            marks.add(new Mark(mark.group(), "“" + mark.group() + "” is printed as it stands: these marks mean nothing in the prose of a catalogue.",
                    "Take the marks away; raised and lowered figures can be typed as they are, such as ² and ₂."));
        }
        return marks;
    }
}
