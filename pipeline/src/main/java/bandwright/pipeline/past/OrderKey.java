package bandwright.pipeline.past;

/** An order of a selling site; two sites may give two orders the same number. */
public record OrderKey(String site, String order) {}
