package bandwright.pipeline.artwork;

import java.util.List;

/** What the artwork shelf answers to a name. */
public sealed interface Found {
    /** A picture that can be printed. */
    record Picture(ArtworkFile artwork) implements Found {}

    /**
     * No such file.
     *
     * @param nearest names that were perhaps meant, the likeliest first; often empty
     */
    record Missing(String asked, List<String> nearest) implements Found {
        public Missing {
            nearest = List.copyOf(nearest);
        }
    }

    /** A file, or a path, that is not taken. */
    record Refused(String name, Flaw flaw) implements Found {}
}
