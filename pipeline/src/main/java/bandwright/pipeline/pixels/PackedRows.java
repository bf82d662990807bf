package bandwright.pipeline.pixels;

import bandwright.pipeline.artwork.PngHeader;
import java.io.DataInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.zip.Inflater;
import java.util.zip.InflaterInputStream;

/** The rows of a PNG file, inflated but still filtered; those of an interlaced one are laid together. */
public final class PackedRows implements RowSource, AutoCloseable {
    private static final int BUFFER = 1 << 16;

    private final Inflater inflater = new Inflater();
    private final DataInputStream in;
    private RowSource rows;

    private PackedRows(PictureData packed) throws IOException {
        in = new DataInputStream(new InflaterInputStream(packed.open(), inflater, BUFFER));
        rows = in::readFully;
    }

    public static PackedRows open(PngHeader header, Path file) throws IOException {
        PackedRows packed = new PackedRows(new PictureData(file, header.data()));
        try {
            packed.rows = header.interlaced() ? new Deinterlaced(header, packed.rows) : packed.rows;
            return packed;
        } catch (IOException | RuntimeException e) {
            packed.close();
            throw e;
        }
    }

    @Override
    public void next(byte[] row) throws IOException {
        rows.next(row);
    }

    @Override
    public void close() throws IOException {
        in.close();
        inflater.end();
    }
}
