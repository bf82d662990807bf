package bandwright.pipeline.load;

/** From when to when, in seconds. */
record Span(long from, long to) {
    Span {
        if (from > to) {
            throw new IllegalArgumentException("it ends before it begins: " + from + " to " + to);
        }
    }

    boolean isEmpty() {
        return from == to;
    }
}
