package exergue.review.content;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;

/**
 * The parts of any record of the model, in the order it declares them. So a key that is added to the model is compared
 * without a further word.
 *
 * @param name   as declared: {@code alsoMeasured}
 */
record Components(String name, Method accessor) {

    private static final ClassValue<List<Components>> OF_CLASS = new ClassValue<>() {
        @Override
        protected List<Components> computeValue(Class<?> record) {
            List<Components> all = new ArrayList<>();
            for (RecordComponent component : record.getRecordComponents()) {
                all.add(new Components(component.getName(), component.getAccessor()));
            }
            return List.copyOf(all);
        }
    };

    static List<Components> of(Record record) {
        return OF_CLASS.get(record.getClass());
    }

    Object in(Record record) {
        try {
            return accessor.invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("records of the model are public", e);
        }
    }
}
