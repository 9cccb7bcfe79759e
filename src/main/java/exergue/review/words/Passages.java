package exergue.review.words;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.jgit.diff.Edit;
import org.eclipse.jgit.diff.EditList;
import org.eclipse.jgit.diff.HistogramDiff;
import org.eclipse.jgit.diff.Sequence;
import org.eclipse.jgit.diff.SequenceComparator;

/**
 * What was put for what in a row of words or paragraphs.
 *
 * @param from   index of the first one taken out, or before which others were put in
 * @param before those taken out
 * @param to     index of the first one put in, in the new row
 * @param after  those put in
 */
public record Passages(int from, List<String> before, int to, List<String> after) {

    public Passages {
        before = List.copyOf(before);
        after = List.copyOf(after);
    }

    /** In order; what is not named stands in both. */
    public static List<Passages> between(List<String> before, List<String> after) {
        EditList edits = new HistogramDiff().diff(new Same(), new Row(before), new Row(after));
        List<Passages> passages = new ArrayList<>();
        for (Edit edit : edits) {
            passages.add(new Passages(edit.getBeginA(), before.subList(edit.getBeginA(), edit.getEndA()),
                    edit.getBeginB(), after.subList(edit.getBeginB(), edit.getEndB())));
        }
        return passages;
    }

    private static final class Row extends Sequence {

        private final List<String> texts;

        Row(List<String> texts) {
            this.texts = texts;
        }

        @Override
        public int size() {
            return texts.size();
        }
    }

    private static final class Same extends SequenceComparator<Row> {

        @Override
        public boolean equals(Row a, int atA, Row b, int atB) {
            return a.texts.get(atA).equals(b.texts.get(atB));
        }

        @Override
        public int hash(Row row, int at) {
            return row.texts.get(at).hashCode();
        }
    }
}
