package bandwright.pipeline.outbox;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;

/** Counts the bytes that reach the disk, and remembers that the disk refused some. */
final class Sink extends FilterOutputStream {
    private long bytes;
    private Optional<IOException> failure = Optional.empty();

    Sink(OutputStream disk) {
        super(disk);
    }

    long bytes() {
        return bytes;
    }

    void rethrowFailure() throws IOException {
        if (failure.isPresent()) {
            throw failure.get();
        }
    }

    @Override
    public void write(int b) throws IOException {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] data, int offset, int length) throws IOException {
        try {
            out.write(data, offset, length);
            bytes += length;
        } catch (IOException e) {
            failure = Optional.of(e);
            throw e;
        }
    }
}
