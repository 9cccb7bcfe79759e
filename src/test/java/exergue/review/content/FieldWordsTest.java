package exergue.review.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import exergue.finding.Place;
import exergue.measure.Reading;
import exergue.model.Apparatus;
import exergue.model.Catalogue;
import exergue.model.Measurement;
import exergue.model.Reference;
import exergue.model.Written;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Whatever the model can say, a reviewer is told in the words of the trade. */
class FieldWordsTest {

    private final SortedSet<String> paths = new TreeSet<>();
    private Section section;

    @Test
    void everyFieldThatTheModelCanHaveIsInTheTable() {
        collect();
        assertTrue(paths.size() > 150, paths::toString);
        assertEquals(List.of(), paths.stream().filter(path -> FieldWords.known(Section.of(path.substring(0, path.indexOf(' '))),
                path.substring(path.indexOf(' ') + 1)).isEmpty()).toList());
    }

    @Test
    void theTableHasNothingThatTheModelHasNot() {
        collect();
        List<String> general = paths.stream().map(path -> path.substring(path.indexOf(' ') + 1)).toList();
        assertEquals(List.of(), FieldWords.all().stream().filter(key -> !paths.contains(key) && !general.contains(key)
                && !key.equals("files ") && paths.stream().noneMatch(path -> isForAll(key, path))).sorted().toList());
    }

    private static boolean isForAll(String key, String path) {
        return key.endsWith(".*") && path.startsWith(key.substring(0, key.length() - 1));
    }

    /** As {@code Facts} takes records apart, on their classes. */
    private void collect() {
        for (RecordComponent component : Catalogue.class.getRecordComponents()) {
            section = Section.of(component.getName());
            Type kind = component.getGenericType();
            boolean entries = Map.class == raw(kind) || List.class == raw(kind);
            take(entries ? argument(kind, Map.class == raw(kind) ? 1 : 0) : kind, "");
        }
    }

    private void take(Type kind, String path) {
        Class<?> raw = raw(kind);
        if (raw == Place.class) {
            return;
        } else if (raw == Written.class || raw == Optional.class) {
            take(argument(kind, 0), path);
        } else if (raw == Map.class) {
            takeMap(kind, path);
        } else if (raw == List.class) {
            Class<?> element = raw(argument(kind, 0));
            boolean named = element == Measurement.class || element == Apparatus.FormerNumber.class;
            if (named) {
                takeParts(element, path);
            } else {
                paths.add(section.name() + " " + path);
            }
        } else if (raw.isSealed() && !Reading.class.isAssignableFrom(raw) && !isOneText(raw)) {
            List.of(raw.getPermittedSubclasses()).forEach(one -> take(one, path));
        } else if (raw.isRecord() && !RecordText.isOneText(raw)) {
            takeParts(raw, path);
        } else {
            paths.add(section.name() + " " + path);
        }
    }

    private static boolean isOneText(Class<?> sealed) {
        return List.of(sealed.getPermittedSubclasses()).stream().allMatch(RecordText::isOneText);
    }

    private void takeMap(Type kind, String path) {
        Class<?> key = raw(argument(kind, 0));
        if (!key.isEnum()) {
            take(argument(kind, 1), path);
            return;
        }
        for (Object word : key.getEnumConstants()) {
            take(argument(kind, 1), below(path, ((Enum<?>) word).name().toLowerCase(Locale.ROOT).replace('_', '-')));
        }
    }

    private void takeParts(Class<?> record, String path) {
        for (RecordComponent component : record.getRecordComponents()) {
            String name = record.getSimpleName() + "." + component.getName();
            String there = Facts.TRANSPARENT.contains(name) ? path : below(path, component.getName());
            if (!Facts.PASSED_OVER.contains(name) && !Facts.PASSED_OVER.contains(there)) {
                take(component.getGenericType(), there);
            }
        }
    }

    private static String below(String path, String name) {
        return path.isEmpty() ? name : path + "." + name;
    }

    private static Class<?> raw(Type kind) {
        return (Class<?>) (kind instanceof ParameterizedType parameterized ? parameterized.getRawType() : kind);
    }

    private static Type argument(Type kind, int nth) {
        return ((ParameterizedType) kind).getActualTypeArguments()[nth];
    }
}
