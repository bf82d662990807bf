package bandwright.pipeline.outbox;

import bandwright.pipeline.write.OutFile;
import java.io.IOException;
import java.io.OutputStream;

/** A file's body that finds the disk full after so many bytes. */
record FullDisk(int bytes) implements OutFile.Body {
    @Override
    public void writeTo(OutputStream out) throws IOException {
        out.write(new byte[bytes]);
        throw new IOException("No space left on device");
    }
}
