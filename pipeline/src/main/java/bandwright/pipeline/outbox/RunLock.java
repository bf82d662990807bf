package bandwright.pipeline.outbox;

import bandwright.rules.words.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;

/** Holds an outbox for one run: a second one waits a while, then gives up. */
final class RunLock {
    private static final int MILLISECONDS_BETWEEN_TRIES = 200;

    private RunLock() {}

    /** Takes the lock at the first of so many tries that finds it free; says once that it waits. */
    static LockFile take(Path folder, int tries, Consumer<String> progress) throws IOException {
        Path file = folder.toRealPath().resolve("ledger.lock");
        for (int tried = 1; ; tried++) {
            Optional<LockFile> lock = LockFile.find(file);
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

    private static void pause(Path folder) {
        try {
            Thread.sleep(MILLISECONDS_BETWEEN_TRIES);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw OutboxFault.of(e, "outbox-locked", folder);
        }
    }
}
