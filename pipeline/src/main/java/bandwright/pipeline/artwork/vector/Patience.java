package bandwright.pipeline.artwork.vector;

import bandwright.pipeline.artwork.Flaw;
import bandwright.pipeline.artwork.RefusedPicture;
import bandwright.pipeline.limits.Limits;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Waits for what a stranger's drawing asks for, and no longer than a person would. The counted limits end nearly all that
 * is endless, the same on every computer; this is for what happens inside a library between two counts.
 */
final class Patience {
    /** Java's own threads are shallow; drawings that go deep end as damaged before this is used up. */
    private static final long STACK = 8L << 20;

    private Patience() {}

    static <T> T wait(Callable<T> work) throws IOException {
        FutureTask<T> task = new FutureTask<>(work);
        Thread thread = new Thread(null, task, "vector artwork", STACK);
        thread.setDaemon(true); // what doesn't end keeps no process alive
        thread.start();
        try {
            return task.get(Limits.VECTOR_SECONDS, TimeUnit.SECONDS);
        } catch (TimeoutException e) {
            task.cancel(true);
            throw new RefusedPicture(Flaw.TOO_COMPLEX);
        } catch (InterruptedException e) {
            task.cancel(true);
            Thread.currentThread().interrupt();
            throw new InterruptedIOException();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof IOException cause) {
                throw cause;
            }
            throw new RefusedPicture(e.getCause() instanceof OutOfMemoryError ? Flaw.TOO_COMPLEX : Flaw.DAMAGED);
        }
    }
}
