package bandwright.pipeline.outbox;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Reads a run's folder back before it is published and compares it with what was meant. */
@FunctionalInterface
public interface Check {
    /** What differs, a plain line each; empty where all is as it was meant. */
    List<String> mismatches(Path folder) throws IOException;
}
