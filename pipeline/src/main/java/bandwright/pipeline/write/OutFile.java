package bandwright.pipeline.write;

import java.io.IOException;
import java.io.OutputStream;

/**
 * A file of a run's folder: its name with slashes, and how its bytes are written. Writing it twice gives the same
 * bytes.
 */
public record OutFile(String name, Body body) {
    /** What writes a file's bytes; the caller closes the stream. */
    @FunctionalInterface
    public interface Body {
        void writeTo(OutputStream out) throws IOException;
    }
}
