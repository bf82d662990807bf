package bandwright.checks.faults;

import java.nio.ByteBuffer;
import java.nio.file.Path;

/** One thing that a run asked of the disk. */
sealed interface DiskCall {
    /** The file or folder that it changes, or puts on the disk for good. */
    Path path();

    /** A new, empty file or folder. */
    record Made(Path path, boolean isFolder) implements DiskCall {}

    record Written(Path path, long at, ByteBuffer bytes) implements DiskCall {}

    /** What was written to the file, or the names in the folder, won't be lost any more. */
    record Synced(Path path) implements DiskCall {}

    record Moved(Path path, Path to) implements DiskCall {}

    record Removed(Path path) implements DiskCall {}
}
