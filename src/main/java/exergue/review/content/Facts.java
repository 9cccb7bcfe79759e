package exergue.review.content;

import exergue.finding.Place;
import exergue.measure.Reading;
import exergue.model.Apparatus.FormerNumber;
import exergue.model.FindSpot;
import exergue.model.Inline;
import exergue.model.Measurement;
import exergue.model.Prose;
import exergue.model.Reference;
import exergue.model.Written;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Everything one record of the model says, field by field, in the order of the model. What is not said has no field.
 * Where something was written, and in what words a reading or a date was spelt, is no part of it.
 */
public final class Facts {

    /** Follows from what is said elsewhere, or is the name the entry goes by. */
    static final Set<String> PASSED_OVER = Set.of("Measurement.convention", "Chapter.path", "Metal.id", "Era.id",
            "FormerNumber.coin", "id", "alsoMeasured.by");

    /** Names of the model that no author knows; what is in them stands as if it were one level up. */
    static final Set<String> TRANSPARENT = Set.of("Measurement.readings", "Limits.spans", "Work.description", "Item.item");

    private static final String WITHHELD = "an exact place, which is not shown";

    private final SortedMap<Field, Said> found = new TreeMap<>();
    private final Set<Field> taken = new HashSet<>();

    private Facts() { }

    /** @param entry any record of the model, or what is no record and then is the whole of what the entry says */
    public static SortedMap<Field, Said> of(Object entry) {
        Facts facts = new Facts();
        facts.take(entry, new Field(""));
        return Collections.unmodifiableSortedMap(facts.found);
    }

    private void take(Object value, Field at) {
        if (value instanceof Place) {
            return;
        } else if (value instanceof FileContent file) {
            found.put(at, new Said.Words(file.digest(), file.shown()));
        } else if (value instanceof Written<?> written) {
            take(written.value(), at);
        } else if (value instanceof Optional<?> maybe) {
            maybe.ifPresent(there -> take(there, at));
        } else if (value instanceof Reading reading) {
            found.put(at, new Said.Figure(reading));
        } else if (value instanceof Map<?, ?> map) {
            map.forEach((key, there) -> take(there, key instanceof Enum<?> word
                    ? at.below(word.ordinal(), word.name().toLowerCase(Locale.ROOT).replace('_', '-')) : at.one(key.toString())));
        } else if (value instanceof List<?> list) {
            takeAll(list, at);
        } else if (value instanceof Record record && !RecordText.isOneText(record)) {
            takeParts(record, at);
        } else {
            found.put(at, new Said.Words(RecordText.of(value)));
        }
    }

    private void takeParts(Record record, Field at) {
        List<Components> components = Components.of(record);
        for (int nth = 0; nth < components.size(); nth++) {
            String name = components.get(nth).name();
            String component = record.getClass().getSimpleName() + "." + name;
            Field there = at.below(nth, TRANSPARENT.contains(component) ? "" : name);
            if (PASSED_OVER.contains(component) || PASSED_OVER.contains(there.path())) {
                continue;
            }
            if (record instanceof FindSpot spot && name.equals("exact")) {
                spot.exact().ifPresent(exact -> found.put(there,
                        new Said.Words(exact.value(), spot.mayPrint() ? exact.value() : WITHHELD)));
            } else {
                take(components.get(nth).in(record), there);
            }
        }
    }

    private void takeAll(List<?> list, Field at) {
        if (list.isEmpty()) {
            return;
        }
        Object first = list.get(0);
        if (first instanceof Prose) {
            found.put(at, new Said.Texts(PlainText.blocks(list.stream().map(Prose.class::cast).toList())));
        } else if (first instanceof Inline) {
            found.put(at, new Said.Words(RecordText.of(list)));
        } else if (first instanceof Measurement || first instanceof Reference || first instanceof FormerNumber) {
            list.forEach(element -> take(element, free(at, name(element))));
        } else {
            found.put(at, new Said.Texts(RecordText.each(list)));
        }
    }

    /** By what one of several is told from the others. */
    private static String name(Object element) {
        if (element instanceof Measurement measurement) {
            return measurement.by().value();
        }
        return element instanceof Reference reference ? reference.work().value() : ((FormerNumber) element).coin().value();
    }

    /** A second reference to the same work is told from the first by a number. */
    private Field free(Field at, String name) {
        Field free = at.one(name);
        for (int nth = 2; !taken.add(free); nth++) {
            free = at.one(name + " (" + nth + ")");
        }
        return free;
    }
}
