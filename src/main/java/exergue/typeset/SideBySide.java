package exergue.typeset;

import java.util.List;

/**
 * Entries before and after a change, to be set side by side.
 *
 * @param title        over the whole
 * @param before       what the earlier state is called
 * @param after        what the later state is called
 * @param summary      the whole in a sentence
 * @param consequences what else is otherwise because of the changes
 */
public record SideBySide(String title, String before, String after, String summary, List<String> consequences,
                         List<Section> sections) {

    public SideBySide {
        consequences = List.copyOf(consequences);
        sections = List.copyOf(sections);
    }

    /** Entries of one kind. */
    public record Section(String heading, List<Entry> entries) {
        public Section {
            entries = List.copyOf(entries);
        }
    }

    /** @param remarks the changes in words; @param rows what is printed of it, line by line */
    public record Entry(String heading, List<String> remarks, List<Row> rows) {
        public Entry {
            remarks = List.copyOf(remarks);
            rows = List.copyOf(rows);
        }
    }

    /** One line of an entry; a side without runs does not have it. @param label what it is: "Obv." */
    public record Row(String label, List<Run> before, List<Run> after) {
        public Row {
            before = List.copyOf(before);
            after = List.copyOf(after);
        }
    }

    /** Words of a line that all stand in both, or in one only. */
    public record Run(Mark mark, String text) { }

    /** Whether words stand on both sides. */
    public enum Mark { KEPT, DELETED, INSERTED }
}
