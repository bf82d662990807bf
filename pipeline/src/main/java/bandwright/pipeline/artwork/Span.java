package bandwright.pipeline.artwork;

/** A stretch of a file: where it begins, and its bytes. */
public record Span(long at, long length) {
    public Span {
        if (at < 0 || length < 0) {
            throw new IllegalArgumentException(at + " + " + length);
        }
    }

    public long end() {
        return at + length;
    }
}
