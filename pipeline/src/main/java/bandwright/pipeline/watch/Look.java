package bandwright.pipeline.watch;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

/**
 * What was seen of one drop at one moment.
 *
 * @param bytes its size; of a folder that of all its files
 * @param changed when it was last written, in milliseconds since 1970; of a folder the last of its files
 * @param parts how many files it is; 1 if it is one itself
 * @param orderFiles the file itself, or the order files of the folder
 */
record Look(Instant at, long bytes, long changed, int parts, Seen seen, List<Path> orderFiles) {
    Look {
        orderFiles = List.copyOf(orderFiles);
    }

    /** Whether nothing has been written between the two. */
    boolean isLike(Look other) {
        return bytes == other.bytes && changed == other.changed && parts == other.parts;
    }
}
