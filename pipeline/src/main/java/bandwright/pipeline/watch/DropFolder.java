package bandwright.pipeline.watch;

import bandwright.pipeline.outbox.LockFile;
import bandwright.pipeline.outbox.OwnOnly;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;

/**
 * The inbox as one watcher holds it: its lock, and the two folders in it where drops are put away. What is on a share
 * may vanish and come back; then it is held anew.
 */
final class DropFolder implements AutoCloseable {
    static final String DONE = "done";
    static final String NOT_TAKEN = "not-taken";
    private static final String ARTWORK = "artwork";
    private static final String LOCK = ".bandwright-watch.lock";

    private final Path inbox;
    private Optional<LockFile> lock = Optional.empty();

    DropFolder(Path inbox) {
        this.inbox = inbox;
    }

    /** Whether a name in the inbox is one of its own folders. */
    static boolean isOwn(String name) {
        return Set.of(DONE, NOT_TAKEN, ARTWORK).contains(DropNames.lower(name));
    }

    Path path() {
        return inbox;
    }

    /**
     * Holds the inbox, or finds that it is still held.
     *
     * @return whether it had to be taken anew: what lies in it may have changed unseen
     */
    boolean hold() throws IOException, Stop {
        if (lock.isPresent() && lock.get().isInPlace()) {
            return false;
        }
        close();
        if (!Files.isDirectory(inbox)) {
            throw Stop.of("inbox-gone", inbox);
        }
        lock = LockFile.find(inbox.toRealPath().resolve(LOCK));
        if (lock.isEmpty()) {
            throw Stop.of("inbox-watched", inbox);
        }
        return true;
    }

    /** Where the files of a run are put away. */
    Path done(String run) throws IOException, Stop {
        Path folder = own(inbox.resolve(DONE)).resolve(run);
        return own(folder);
    }

    Path notTaken() throws IOException, Stop {
        return own(inbox.resolve(NOT_TAKEN));
    }

    /** Makes the folder if it isn't there; a link in its place could lead anywhere, and is refused. */
    private static Path own(Path folder) throws IOException, Stop {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            Files.createDirectory(folder, OwnOnly.folder());
        }
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            throw Stop.of("no-folder", folder);
        }
        return folder;
    }

    /** Lets go of a lock that may be of a folder that is gone: what the system says to that is of no use. */
    @Override
    public void close() {
        try {
            if (lock.isPresent()) {
                lock.get().close();
            }
        } catch (IOException e) {
            return;
        } finally {
            lock = Optional.empty();
        }
    }
}
