package bandwright.pipeline.held;

import java.util.function.Function;

/** What a per-row stage makes of one row: made or held, nothing third. */
public sealed interface Outcome<T> {
    record Made<T>(T value) implements Outcome<T> {}

    record Held<T>(Reason reason) implements Outcome<T> {}

    static <T> Outcome<T> made(T value) {
        return new Made<>(value);
    }

    static <T> Outcome<T> held(Reason reason) {
        return new Held<>(reason);
    }

    /** What the next step makes of it; a held row stays held for its own reason. */
    default <U> Outcome<U> then(Function<? super T, Outcome<U>> next) {
        if (this instanceof Made<T> made) {
            return next.apply(made.value());
        }
        return held(((Held<T>) this).reason());
    }
}
