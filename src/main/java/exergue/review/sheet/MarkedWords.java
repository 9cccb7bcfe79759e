package exergue.review.sheet;

import exergue.review.words.Passages;
import exergue.typeset.SideBySide.Mark;
import exergue.typeset.SideBySide.Row;
import exergue.typeset.SideBySide.Run;
import java.util.ArrayList;
import java.util.List;

/** Two lines with marks on the words that only one of them has. */
final class MarkedWords {

    private MarkedWords() { }

    /** @param before empty where there was no such line */
    static Row row(String label, String before, String after) {
        List<String> old = words(before);
        List<String> now = words(after);
        List<Run> left = new ArrayList<>();
        List<Run> right = new ArrayList<>();
        int oldAt = 0;
        int newAt = 0;
        for (Passages passage : Passages.between(old, now)) {
            add(Mark.KEPT, old.subList(oldAt, passage.from()), left);
            add(Mark.KEPT, now.subList(newAt, passage.to()), right);
            add(Mark.DELETED, passage.before(), left);
            add(Mark.INSERTED, passage.after(), right);
            oldAt = passage.from() + passage.before().size();
            newAt = passage.to() + passage.after().size();
        }
        add(Mark.KEPT, old.subList(oldAt, old.size()), left);
        add(Mark.KEPT, now.subList(newAt, now.size()), right);
        return new Row(label, left, right);
    }

    /** A line of an entry that is on one side only: its words need no marks. */
    static Row whole(String label, String before, String after) {
        List<Run> left = new ArrayList<>();
        List<Run> right = new ArrayList<>();
        add(Mark.KEPT, words(before), left);
        add(Mark.KEPT, words(after), right);
        return new Row(label, left, right);
    }

    private static List<String> words(String text) {
        return text.isBlank() ? List.of() : List.of(text.strip().split(" +"));
    }

    private static void add(Mark mark, List<String> words, List<Run> into) {
        if (!words.isEmpty()) {
            into.add(new Run(mark, String.join(" ", words)));
        }
    }
}
