package bandwright.pipeline.artwork;

import java.io.IOException;
import java.util.Optional;

/**
 * What a WebP says about its picture, of a moving one about the first (WebP Container Specification, RFC 9649).
 *
 * @param profile an ICC profile
 */
public record WebpHeader(int width, int height, Orientation orientation, Optional<Span> profile) {
    /** Walks the chunks; the file must have all of them, and one picture of the size that it promises. */
    public static WebpHeader read(PictureBytes bytes) throws IOException {
        return new WebpChunks(bytes).header();
    }
}
