package bandwright.pipeline.write.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/** Rows deflated into a scratch file, from which documents take them. */
final class Repacked implements AutoCloseable {
    private static final int LEVEL = Integer.getInteger("lvl", 6);
    private static final int BUFFER = 1 << 16;

    private final Path file;
    private final Deflater deflater = new Deflater(LEVEL);
    private final OutputStream out;

    Repacked(Path file) throws IOException {
        this.file = file;
        deflater.setStrategy(Integer.getInteger("strat", 0));
        out = new DeflaterOutputStream(Files.newOutputStream(file), deflater, BUFFER);
    }

    void write(byte[] row) throws IOException {
        out.write(row);
    }

    /** Ends the file; nothing more can be written. */
    PictureData finished() throws IOException {
        out.close();
        return PictureData.whole(file);
    }

    @Override
    public void close() throws IOException {
        out.close();
        deflater.end();
    }
}
