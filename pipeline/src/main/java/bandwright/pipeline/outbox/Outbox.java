package bandwright.pipeline.outbox;

import bandwright.pipeline.RunId;
import bandwright.pipeline.write.OutFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Where finished runs stand: outbox/2026-03-02-1 and so on.
 *
 * <p>The invariant: whoever looks into the outbox, at whatever moment and after whatever crash, finds each run whole or
 * not at all. A run is written in a folder beside, put on the disk file by file, read back and compared; only then one
 * rename lets it begin to exist. A finished run is never touched again. One run works on an outbox at a time; what a
 * killed one left is removed by the next.
 */
public final class Outbox implements AutoCloseable {
    /** Ten seconds at five tries a second [our judgement]: longer than a small run, shorter than a person's patience. */
    private static final int TRIES = 50;

    private final Path folder;
    private final LockFile lock;

    private Outbox(Path folder, LockFile lock) {
        this.folder = folder;
        this.lock = lock;
    }

    /**
     * Takes the outbox for this run; close it to let the next one in.
     *
     * @param progress hears one line if another run must be waited for
     */
    public static Outbox open(Path folder, Consumer<String> progress) {
        return open(folder, TRIES, progress);
    }

    static Outbox open(Path folder, int tries, Consumer<String> progress) {
        try {
            createFolder(folder);
            Outbox outbox = new Outbox(folder, RunLock.take(folder, tries, progress));
            outbox.removeLeftovers();
            return outbox;
        } catch (IOException | UncheckedIOException e) {
            throw DiskFaults.of(e, folder);
        }
    }

    /** The name that the next run of that date would get, for a run that writes nothing. */
    public static RunId peek(Path folder, LocalDate date, int remembered) {
        try {
            int highest = Files.isDirectory(folder) ? RunNames.highest(folder, date) : 0;
            return new RunId(date, Math.max(highest, remembered) + 1);
        } catch (IOException | UncheckedIOException e) {
            throw DiskFaults.of(e, folder);
        }
    }

    private static void createFolder(Path folder) throws IOException {
        for (Path path = folder.toAbsolutePath(); path != null; path = path.getParent()) {
            if (Files.exists(path) && !Files.isDirectory(path)) {
                throw OutboxFault.of("outbox-is-a-file", path);
            }
        }
        if (!Files.isDirectory(folder)) {
            Files.createDirectories(folder, OwnOnly.folder());
            Optional.ofNullable(folder.toAbsolutePath().getParent()).ifPresent(FolderSync::sync);
        }
    }

    /** The folders of finished runs, the newest first. */
    public static List<Path> runs(Path folder) throws IOException {
        return RunNames.newestFirst(folder);
    }

    private void removeLeftovers() throws IOException {
        try {
            for (Path path : RunNames.list(folder)) {
                if (RunNames.isMaking(path)) {
                    Tree.delete(path);
                }
            }
        } catch (IOException | UncheckedIOException e) {
            close();
            throw e;
        }
    }

    /**
     * One more than the highest of that date.
     *
     * @param remembered the highest that ever was, as its folder may be gone
     */
    public RunId nextRun(LocalDate date, int remembered) {
        return peek(folder, date, remembered);
    }

    /**
     * Publishes a run whole, or throws an {@link OutboxFault} and leaves nothing.
     *
     * @param record is begun before the folder gets its name, and kept or taken back after
     * @param readBack looks at the written folder before it is published
     * @return the run's folder
     */
    public Path publish(RunId id, List<OutFile> files, RunRecord record, Check readBack) {
        Path place = folder.resolve(id.toString());
        try {
            refuseTaken(place);
            Staging staging = Staging.create(folder, RunNames.making(id));
            try {
                staging.write(files);
                refuseMismatches(readBack.mismatches(staging.folder()));
                refuseTaken(place);
                name(staging, place, folder, record);
            } finally {
                staging.remove(); // after the rename nothing is left to remove
            }
        } catch (IOException | UncheckedIOException e) {
            throw DiskFaults.of(e, folder);
        }
        return place;
    }

    private static void name(Staging staging, Path place, Path outbox, RunRecord record) throws IOException {
        record.begin();
        try {
            Files.move(staging.folder(), place, StandardCopyOption.ATOMIC_MOVE); // here the run begins to exist
        } catch (IOException | RuntimeException e) {
            record.takeBack();
            throw e;
        }
        FolderSync.sync(outbox); // or a power cut may undo the rename of a run that is recorded
        try {
            record.keep();
        } catch (OutboxFault e) {
            return; // the run is there, and whoever opens its record next sees that it is
        }
    }

    /** An empty folder for what is needed while files are written; it goes when the outbox is closed. */
    public Path scratch() {
        Path scratch = RunNames.scratch(folder);
        try {
            Tree.delete(scratch);
            return Files.createDirectory(scratch, OwnOnly.folder());
        } catch (IOException | UncheckedIOException e) {
            throw DiskFaults.of(e, folder);
        }
    }

    /** An atomic move onto an empty folder would replace it without a word. */
    private static void refuseTaken(Path place) {
        if (Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
            throw OutboxFault.of("run-exists", place);
        }
    }

    private static void refuseMismatches(List<String> mismatches) {
        if (!mismatches.isEmpty()) {
            throw OutboxFault.of("read-back", mismatches.size(), mismatches.get(0));
        }
    }

    @Override
    public void close() {
        try {
            Tree.delete(RunNames.scratch(folder));
            lock.close();
        } catch (IOException | UncheckedIOException e) {
            throw DiskFaults.of(e, folder);
        }
    }
}
