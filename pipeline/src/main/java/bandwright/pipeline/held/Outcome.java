package bandwright.pipeline.held;

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
}
