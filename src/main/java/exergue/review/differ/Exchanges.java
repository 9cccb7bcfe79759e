package exergue.review.differ;

import exergue.review.change.EntryChange;
import exergue.review.change.FieldChange;
import exergue.review.change.Kinship;
import exergue.review.content.Said;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Two entries of which each now says what the other said, as where ids or tickets were changed round. */
final class Exchanges {

    /** One figure that goes from a to b while one goes from b to a is seen by chance. */
    private static final int FEWEST_FIELDS = 2;

    private Exchanges() { }

    static List<Kinship> among(List<EntryChange> changes) {
        Map<List<String>, EntryChange.Altered> open = new HashMap<>();
        List<Kinship> found = new ArrayList<>();
        for (EntryChange change : changes) {
            if (change instanceof EntryChange.Altered altered && !altered.renamed() && altered.fields().size() >= FEWEST_FIELDS) {
                EntryChange.Altered other = open.remove(key(altered, true));
                if (other == null) {
                    open.put(key(altered, false), altered);
                } else {
                    found.add(new Kinship.Exchanged(List.of(other.before(), altered.before()), List.of(other.subject(), altered.subject())));
                }
            }
        }
        return found;
    }

    /** What has become of what, or the other way round. */
    private static List<String> key(EntryChange.Altered altered, boolean turned) {
        List<String> key = new ArrayList<>(List.of(altered.subject().section().name()));
        for (FieldChange field : altered.fields()) {
            Optional<Said> from = turned ? field.after() : field.before();
            Optional<Said> to = turned ? field.before() : field.after();
            key.addAll(List.of(field.field().path(), field.field().of(), from.map(Said::meaning).orElse(""), to.map(Said::meaning).orElse("")));
        }
        return key;
    }
}
