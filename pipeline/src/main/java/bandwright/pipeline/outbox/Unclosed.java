package bandwright.pipeline.outbox;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** A stream that its writer may close: the file stays open until it is synced. */
final class Unclosed extends FilterOutputStream {
    Unclosed(OutputStream out) {
        super(out);
    }

    @Override
    public void write(byte[] data, int offset, int length) throws IOException {
        out.write(data, offset, length);
    }

    @Override
    public void close() throws IOException {
        flush();
    }
}
