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
import java.util.Set;
import java.util.stream.Stream;

/** The folder in which a run is made, beside its final place: every file and folder in it is on the disk, not in a cache. */
final class Staging {
    private static final int BUFFER_BYTES = 64 << 10;
    private static final Set<StandardOpenOption> NEW = Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);

    private final Path outbox;
    private final Path folder;

    private Staging(Path outbox, Path folder) {
        this.outbox = outbox;
        this.folder = folder;
    }

    static Staging create(Path outbox, String name) throws IOException {
        return new Staging(outbox, Files.createDirectory(outbox.resolve(name), OwnOnly.folder()));
    }

    Path folder() {
        return folder;
    }

    void write(List<OutFile> files) throws IOException {
        for (OutFile file : files) {
            write(file);
        }
        try (Stream<Path> all = Files.walk(folder)) {
            all.filter(Files::isDirectory).forEach(FolderSync::sync);
        }
    }

    private void write(OutFile file) throws IOException {
        Path place = SafeName.resolve(folder, file.name());
        Files.createDirectories(place.getParent(), OwnOnly.folder());
        try (FileChannel channel = FileChannel.open(place, NEW, OwnOnly.file())) {
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
