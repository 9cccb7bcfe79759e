package exergue.review.differ;

import exergue.measure.PrintForm;
import exergue.review.change.FieldChange;
import exergue.review.content.Facts;
import exergue.review.content.Field;
import exergue.review.content.Said;
import exergue.review.content.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeSet;

/** What one entry says otherwise than another. */
final class FieldDiffer {

    /** Fields that hold the id of an entry, and of which section. */
    private static final Map<String, Section> POINTERS = Map.of("type", Section.TYPES, "mint", Section.of("mints"),
            "ruler", Section.of("rulers"), "holding.collection", Section.of("collections"), "find.spot", Section.of("findSpots"),
            "measured.by", Section.of("conventions"));

    private final FigureRemarks remarks;
    private final Map<Section, Map<String, String>> became;

    /** @param became what each old entry is called now, section by section */
    FieldDiffer(PrintForm before, PrintForm after, Map<Section, Map<String, String>> became) {
        this.remarks = new FigureRemarks(before, after);
        this.became = became;
    }

    /** In the order of the model; empty where both say the same. */
    List<FieldChange> differences(Object before, Object after) {
        SortedMap<Field, Said> old = Facts.of(before);
        SortedMap<Field, Said> now = Facts.of(after);
        TreeSet<Field> fields = new TreeSet<>(old.keySet());
        fields.addAll(now.keySet());
        List<FieldChange> changes = new ArrayList<>();
        for (Field field : fields) {
            Said was = old.get(field);
            Said is = now.get(field);
            if (was == null || is == null) {
                changes.add(new FieldChange(field, Optional.ofNullable(was), Optional.ofNullable(is), List.of()));
            } else if (!was.saysTheSameAs(is) && !pointsToTheSame(field, was, is)) {
                changes.add(new FieldChange(field, Optional.of(was), Optional.of(is), remarks.of(was, is)));
            }
        }
        return changes;
    }

    /** Another id of what was renamed is no change of what points to it. */
    private boolean pointsToTheSame(Field field, Said was, Said is) {
        return POINTERS.containsKey(field.path())
                && is.meaning().equals(became.getOrDefault(POINTERS.get(field.path()), Map.of()).get(was.meaning()));
    }

    static List<FieldChange> given(Object entry) {
        return Facts.of(entry).entrySet().stream().map(fact -> new FieldChange(fact.getKey(), Optional.empty(),
                Optional.of(fact.getValue()), List.of())).toList();
    }

    static List<FieldChange> gone(Object entry) {
        return given(entry).stream().map(FieldChange::reversed).toList();
    }
}
