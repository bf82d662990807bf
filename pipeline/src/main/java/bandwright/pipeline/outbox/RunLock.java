package bandwright.pipeline.outbox;

import bandwright.rules.words.Words;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;

/**
 * Holds an outbox for one run: a second one waits a while, then gives up. The system frees the lock of a run that is
 * killed. The file is never deleted: whoever waits for it would then hold a lock that nobody else sees.
 */
final class RunLock implements AutoCloseable {
    private static final int MILLISECONDS_BETWEEN_TRIES = 200;

    /**
     * Lock files held by this very process. A file lock is the process's: a second channel to the same file would be
     * refused, and closing it would free the first one's lock (java.nio.channels.FileLock, "Platform dependencies").
     */
    private static final Set<Path> HELD_HERE = ConcurrentHashMap.newKeySet();

    private final Path file;
    private final FileChannel channel;

    private RunLock(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /** Takes the lock at the first of so many tries that finds it free; says once that it waits. */
    static RunLock take(Path folder, int tries, Consumer<String> progress) throws IOException {
        Path file = folder.toRealPath().resolve("ledger.lock");
        for (int tried = 1; ; tried++) {
            Optional<RunLock> lock = find(file);
            if (lock.isPresent()) {
                return lock.get();
            }
            if (tried >= tries) {
                throw OutboxFault.of("outbox-locked", folder);
            }
            if (tried == 1) {
                progress.accept(Words.say("outbox.waiting", folder));
            }
            pause(folder);
        }
    }

    private static Optional<RunLock> find(Path file) throws IOException {
        if (!HELD_HERE.add(file)) {
            return Optional.empty();
        }
        Optional<RunLock> found = Optional.empty();
        try {
            found = lock(file);
            return found;
        } finally {
            if (found.isEmpty()) {
                HELD_HERE.remove(file);
            }
        }
    }

    private static Optional<RunLock> lock(Path file) throws IOException {
        FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            if (channel.tryLock() != null) {
                return Optional.of(new RunLock(file, channel));
            }
        } catch (IOException e) {
            channel.close();
            throw e;
        }
        channel.close();
        return Optional.empty();
    }

    private static void pause(Path folder) {
        try {
            Thread.sleep(MILLISECONDS_BETWEEN_TRIES);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw OutboxFault.of(e, "outbox-locked", folder);
        }
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
