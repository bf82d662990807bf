package bandwright.pipeline.watch;

import java.io.IOException;
import java.nio.file.ClosedWatchServiceException;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Waits for the next look: until something lands in the inbox, where its disk tells of that, or until the time for a
 * look has come, as shares tell of nothing. Closing it ends the waiting at once and for good.
 */
public final class Waking implements AutoCloseable {
    /** What lands in one go is looked at once. */
    private static final int MILLISECONDS_TO_SETTLE = 200;

    private final Path inbox;
    private final CountDownLatch closed = new CountDownLatch(1);
    private final Optional<WatchService> events;
    private Optional<WatchKey> key = Optional.empty();

    public Waking(Path inbox) {
        this.inbox = inbox;
        this.events = events(inbox);
    }

    /** Where the system has none to give, looks go by time alone. */
    private static Optional<WatchService> events(Path inbox) {
        try {
            return Optional.of(inbox.getFileSystem().newWatchService());
        } catch (IOException | UnsupportedOperationException e) {
            return Optional.empty();
        }
    }

    public void await(Duration longest) throws InterruptedException {
        if (register()) {
            event(longest);
        } else {
            closed.await(longest.toMillis(), TimeUnit.MILLISECONDS);
        }
    }

    private void event(Duration longest) throws InterruptedException {
        try {
            WatchKey woken = events.orElseThrow().poll(longest.toMillis(), TimeUnit.MILLISECONDS);
            if (woken != null) {
                closed.await(MILLISECONDS_TO_SETTLE, TimeUnit.MILLISECONDS);
                woken.pollEvents();
                key = woken.reset() ? key : Optional.empty();
            }
        } catch (ClosedWatchServiceException e) {
            closed.await(longest.toMillis(), TimeUnit.MILLISECONDS);
        }
    }

    /** A folder that was away has to be registered anew. */
    private boolean register() {
        if (events.isEmpty() || closed.getCount() == 0) {
            return false;
        }
        if (key.isPresent() && key.get().isValid()) {
            return true;
        }
        try {
            key = Optional.of(inbox.register(events.get(), StandardWatchEventKinds.ENTRY_CREATE));
            return true;
        } catch (IOException | ClosedWatchServiceException e) {
            key = Optional.empty();
            return false;
        }
    }

    @Override
    public void close() {
        closed.countDown();
        try {
            if (events.isPresent()) {
                events.get().close();
            }
        } catch (IOException e) {
            return; // the waiting has ended all the same
        }
    }
}
