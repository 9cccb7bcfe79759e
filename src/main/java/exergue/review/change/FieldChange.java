package exergue.review.change;

import exergue.review.content.Field;
import exergue.review.content.Said;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One field that says something else.
 *
 * @param before  empty where it is new
 * @param after   empty where it was taken out
 * @param remarks what a reviewer should know of it
 */
public record FieldChange(Field field, Optional<Said> before, Optional<Said> after, List<Remark> remarks) {

    public FieldChange {
        remarks = List.copyOf(remarks);
    }

    public FieldChange with(Remark remark) {
        return new FieldChange(field, before, after, Stream.concat(remarks.stream(), Stream.of(remark)).toList());
    }

    public FieldChange reversed() {
        return new FieldChange(field, after, before, remarks.stream().map(Remark::reversed).toList());
    }
}
