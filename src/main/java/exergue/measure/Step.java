package exergue.measure;

import java.util.function.Function;

/** What one step of reading a text gave: something to go on with, or the remark that ends it. */
sealed interface Step<T> {

    record Done<T>(T value) implements Step<T> { }

    record Stopped<T>(Remark remark) implements Step<T> { }

    static <T> Step<T> done(T value) {
        return new Done<>(value);
    }

    default <U> Step<U> then(Function<? super T, Step<U>> next) {
        if (this instanceof Done<T> done) {
            return next.apply(done.value());
        }
        return new Stopped<>(((Stopped<T>) this).remark());
    }
}
