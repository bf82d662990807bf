package bandwright.pipeline.pixels;

import bandwright.pipeline.artwork.PictureBytes;
import bandwright.pipeline.artwork.PngHeader;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;

/** The samples of a PNG file row by row, from the top. */
public final class PlainRows implements Closeable {
    private final PngHeader header;
    private final PackedRows packed;
    private byte[] row;
    private byte[] above;

    private PlainRows(PngHeader header, PackedRows packed) {
        this.header = header;
        this.packed = packed;
        row = new byte[1 + header.rowBytes()];
        above = new byte[row.length];
    }

    public static PlainRows open(Path file) throws IOException {
        try (PictureBytes bytes = PictureBytes.open(file)) {
            PngHeader header = PngHeader.read(bytes);
            return new PlainRows(header, PackedRows.open(header, file));
        }
    }

    public PngHeader header() {
        return header;
    }

    /** The next row: its samples begin at 1, and stand until the row after the next is asked for. */
    public byte[] next() throws IOException {
        byte[] free = above;
        above = row;
        row = free;
        packed.next(row);
        PngFilter.undo(row, above, Math.max(1, header.bitsPerPixel() / 8));
        return row;
    }

    @Override
    public void close() throws IOException {
        packed.close();
    }
}
