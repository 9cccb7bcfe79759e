package exergue.review.content;

import exergue.dating.Dating;
import exergue.finding.Place;
import exergue.legend.Legend;
import exergue.measure.Alloy;
import exergue.measure.Reading;
import exergue.measure.Unit;
import exergue.model.Excuse;
import exergue.model.ExcusedIn;
import exergue.model.Inline;
import exergue.model.Phrase;
import exergue.model.Provenance;
import exergue.model.Reference;
import exergue.model.Written;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Any value of the model as one line of text; places in files are no part of it. */
final class RecordText {

    private static final List<Class<?>> ONE_TEXT = List.of(Dating.class, Legend.class, Unit.class, Alloy.class, Reading.class,
            Phrase.class, Reference.class, Provenance.class, Excuse.class, ExcusedIn.class);

    private RecordText() { }

    static String of(Object value) {
        if (value instanceof Written<?> written) {
            return of(written.value());
        } else if (value instanceof Optional<?> maybe) {
            return maybe.map(RecordText::of).orElse("");
        } else if (value instanceof Place) {
            return "";
        } else if (value instanceof Enum<?> word) {
            return word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        } else if (value instanceof Boolean yes) {
            return yes ? "yes" : "no";
        } else if (value instanceof Collection<?> several) {
            return ofAll(several);
        } else if (value instanceof Map<?, ?> map) {
            return map.entrySet().stream().map(entry -> of(entry.getKey()) + ": " + of(entry.getValue()))
                    .collect(Collectors.joining(", "));
        }
        return value instanceof Record record ? ofRecord(record) : String.valueOf(value);
    }

    private static String ofAll(Collection<?> several) {
        if (!several.isEmpty() && several.iterator().next() instanceof Inline) {
            return PlainText.line(several.stream().map(Inline.class::cast).toList());
        }
        return several.stream().map(RecordText::of).filter(text -> !text.isEmpty()).collect(Collectors.joining(", "));
    }

    private static String ofRecord(Record record) {
        return isOneText(record) ? oneText(record) : Components.of(record).stream()
                .map(component -> of(component.in(record))).filter(text -> !text.isEmpty()).collect(Collectors.joining(", "));
    }

    /** True for what an author writes as one value, though the model takes it apart. */
    static boolean isOneText(Object value) {
        return isOneText(value.getClass());
    }

    static boolean isOneText(Class<?> kind) {
        return !kind.isRecord() || ONE_TEXT.stream().anyMatch(one -> one.isAssignableFrom(kind));
    }

    private static String oneText(Record record) {
        if (record instanceof Dating dating) {
            return dating.edtf();
        } else if (record instanceof Legend legend) {
            return legend.text();
        } else if (record instanceof Unit unit) {
            return unit.name();
        } else if (record instanceof Alloy alloy) {
            return alloy.id();
        } else if (record instanceof Reading reading) {
            return new Said.Figure(reading).shown();
        } else if (record instanceof Phrase phrase) {
            return PlainText.line(phrase.runs());
        } else if (record instanceof Provenance step) {
            return step.words().value() + step.date().map(date -> " [" + date.value().edtf() + "]").orElse("")
                    + step.under().map(under -> " [indexed under " + under.value() + "]").orElse("");
        }
        if (record instanceof Excuse excuse) {
            return excuse.finding() + ", because: " + excuse.because();
        } else if (record instanceof ExcusedIn excused) {
            return excused.file() + excused.entry().map(entry -> ", " + entry).orElse("") + ": " + oneText(excused.excuse());
        }
        Reference reference = (Reference) record;
        boolean plain = reference.relation() == Reference.Relation.SAME_TYPE;
        return reference.number() + (plain ? "" : ", " + reference.relation().words());
    }

    static List<String> each(Collection<?> values) {
        return values.stream().map(RecordText::of).toList();
    }
}
