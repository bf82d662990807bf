package bandwright.pipeline.outbox;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * A file that one process holds at a time. The system frees the lock of one that is killed. The file is never deleted:
 * whoever waits for it would then hold a lock that nobody else sees.
 */
public final class LockFile implements AutoCloseable {
    /**
     * Lock files held by this very process. A file lock is the process's: a second channel to the same file would be
     * refused, and closing it would free the first one's lock (java.nio.channels.FileLock, "Platform dependencies").
     */
    private static final Set<Path> HELD_HERE = ConcurrentHashMap.newKeySet();

    private final Path file;
    private final FileChannel channel;
    private final @Nullable Object key;

    private LockFile(Path file, FileChannel channel) throws IOException {
        this.file = file;
        this.channel = channel;
        this.key = key(file);
    }

    /** The lock, or nothing if somebody else holds it. The file is made if it isn't there. */
    public static Optional<LockFile> find(Path file) throws IOException {
        if (!HELD_HERE.add(file)) {
            return Optional.empty();
        }
        Optional<LockFile> found = Optional.empty();
        try {
            found = lock(file);
            return found;
        } finally {
            if (found.isEmpty()) {
                HELD_HERE.remove(file);
            }
        }
    }

    private static Optional<LockFile> lock(Path file) throws IOException {
        FileChannel channel =
                FileChannel.open(file, Set.of(StandardOpenOption.CREATE, StandardOpenOption.WRITE), OwnOnly.file());
        try {
            if (channel.tryLock() != null) {
                return Optional.of(new LockFile(file, channel));
            }
        } catch (IOException e) {
            channel.close();
            throw e;
        }
        channel.close();
        return Optional.empty();
    }

    /** Whether the file that is locked still stands where it stood: a folder may have been taken away, or exchanged. */
    public boolean isInPlace() {
        try {
            return Files.exists(file) && Objects.equals(key, key(file));
        } catch (IOException e) {
            return false;
        }
    }

    private static @Nullable Object key(Path file) throws IOException {
        return Files.readAttributes(file, BasicFileAttributes.class).fileKey();
    }

    /** Closing the channel frees the lock. */
    @Override
    public void close() throws IOException {
        try {
            channel.close();
        } finally {
            HELD_HERE.remove(file);
        }
    }
}
