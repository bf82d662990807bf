package bandwright.pipeline.write.proofs;

import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.Supplier;

/**
 * Things that are made in their order by threads beside the caller's and, where they aren't far enough, by the caller's
 * too. They are never more than a few ahead, so that few are in memory; what was taken is made anew when it is asked for again.
 */
final class Ahead<T> {
    private static final int FEW = 6;
    private static final int THREADS = 2;

    private final List<Supplier<T>> makers;
    private final AtomicReferenceArray<FutureTask<T>> tasks;
    private final Semaphore room = new Semaphore(FEW);
    private final AtomicInteger next = new AtomicInteger();
    private boolean isBegun;

    Ahead(List<Supplier<T>> makers) {
        this.makers = List.copyOf(makers);
        this.tasks = new AtomicReferenceArray<>(makers.size());
        for (int i = 0; i < makers.size(); i++) {
            tasks.set(i, task(i));
        }
    }

    /** The thing of that number. */
    T get(int number) {
        begin();
        FutureTask<T> task = tasks.getAndSet(number, task(number));
        task.run();
        room.release();
        return result(task);
    }

    private FutureTask<T> task(int number) {
        return new FutureTask<>(makers.get(number)::get);
    }

    private synchronized void begin() {
        if (isBegun) {
            return;
        }
        isBegun = true;
        for (int i = 0; i < THREADS; i++) {
            Thread beside = new Thread(this::makeAll, "proofs " + i);
            beside.setDaemon(true); // a run that fails waits for no picture
            beside.start();
        }
    }

    private void makeAll() {
        room.acquireUninterruptibly();
        for (int i = next.getAndIncrement(); i < tasks.length(); i = next.getAndIncrement()) {
            tasks.get(i).run();
            room.acquireUninterruptibly();
        }
    }

    private static <T> T result(FutureTask<T> task) {
        try {
            return task.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        } catch (ExecutionException e) {
            throw new IllegalStateException("a proof could not be drawn", e.getCause());
        }
    }
}
