package bandwright.pipeline.outbox;

import bandwright.pipeline.write.OutFile;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Stream;

/** The folder in which a run is made, beside its final place: every file and folder in it is on the disk, not in a cache. */
final class Staging {
    private static final int BUFFER_BYTES = 64 << 10;
    /** Two, whatever the machine has: each may hold a list of thousands of pieces. */
    private static final int THREADS = 2;

    private final Path outbox;
    private final Path folder;

    private Staging(Path outbox, Path folder) {
        this.outbox = outbox;
        this.folder = folder;
    }

    static Staging create(Path outbox, String name) throws IOException {
        return new Staging(outbox, Files.createDirectory(outbox.resolve(name)));
    }

    Path folder() {
        return folder;
    }

    /** Writes all files, two at a time; when this ends none is still being written, even after a failure. */
    void write(List<OutFile> files) throws IOException {
        ExecutorService pool = Executors.newFixedThreadPool(THREADS);
        try {
            List<CompletableFuture<Void>> writings = files.stream()
                    .map(file -> CompletableFuture.runAsync(() -> writeUnchecked(file), pool))
                    .toList();
            writings.forEach(
                    writing -> writing.handle((done, failure) -> failure).join());
            writings.forEach(CompletableFuture::join);
        } catch (CompletionException e) {
            throw e.getCause() instanceof RuntimeException failure ? failure : e;
        } finally {
            pool.shutdown();
        }
        try (Stream<Path> all = Files.walk(folder)) {
            all.filter(Files::isDirectory).forEach(FolderSync::sync);
        }
    }

    private void writeUnchecked(OutFile file) {
        try {
            write(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void write(OutFile file) throws IOException {
        Path place = SafeName.resolve(folder, file.name());
        Files.createDirectories(place.getParent());
        try (FileChannel channel = FileChannel.open(place, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            Sink sink = new Sink(Channels.newOutputStream(channel));
            fill(sink, file);
            channel.force(true);
            if (channel.size() != sink.bytes()) {
                throw new IOException(file.name() + ": " + channel.size() + " of " + sink.bytes() + " bytes");
            }
        }
    }

    /** Tells a failing disk from a failing source: a full outbox and a picture that is gone have different cures. */
    private void fill(Sink sink, OutFile file) throws IOException {
        try {
            OutputStream buffered = new BufferedOutputStream(sink, BUFFER_BYTES);
            file.body().writeTo(new Unclosed(buffered));
            buffered.flush();
        } catch (IOException | UncheckedIOException e) {
            sink.rethrowFailure();
            throw DiskFaults.ofSource(e, outbox, file.name());
        }
    }

    /** Removes what is left of it. Where the disk refuses even that, the next run removes it; the first failure counts. */
    void remove() {
        try {
            Tree.delete(folder);
        } catch (IOException | UncheckedIOException e) {
            return;
        }
    }
}
