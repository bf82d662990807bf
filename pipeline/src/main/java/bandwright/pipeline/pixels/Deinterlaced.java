package bandwright.pipeline.pixels;

import bandwright.pipeline.artwork.PngHeader;
import java.io.IOException;

/** The rows of an interlaced PNG in their order from the top: its seven passes are laid together (ISO/IEC 15948, 8.2). */
final class Deinterlaced implements RowSource {
    /** Of each pass: first column, first row, step of columns, step of rows. */
    private static final int[][] PASSES = {
        {0, 0, 8, 8}, {4, 0, 8, 8}, {0, 4, 4, 8}, {2, 0, 4, 4}, {0, 2, 2, 4}, {1, 0, 2, 2}, {0, 1, 1, 2}
    };

    private final PngHeader header;
    private final int distance;
    private final byte[][] rows;
    private int next;

    Deinterlaced(PngHeader header, RowSource packed) throws IOException {
        this.header = header;
        distance = Math.max(1, header.bitsPerPixel() / 8);
        rows = new byte[header.height()][1 + header.rowBytes()];
        for (int[] pass : PASSES) {
            lay(pass, packed);
        }
    }

    private void lay(int[] pass, RowSource packed) throws IOException {
        int width = (header.width() - pass[0] + pass[2] - 1) / pass[2];
        if (width <= 0) {
            return; // a pass without pixels has no rows at all
        }
        byte[] above = new byte[1 + header.rowBytes(width)];
        for (int y = pass[1]; y < header.height(); y += pass[3]) {
            byte[] row = new byte[above.length];
            packed.next(row);
            PngFilter.undo(row, above, distance);
            for (int i = 0; i < width; i++) {
                copyPixel(row, i, rows[y], pass[0] + i * pass[2]);
            }
            above = row;
        }
    }

    private void copyPixel(byte[] from, int i, byte[] into, int x) {
        int bits = header.bitsPerPixel();
        if (bits >= 8) {
            System.arraycopy(from, 1 + i * distance, into, 1 + x * distance, distance);
            return;
        }
        Samples.put(into, 1, x, bits, Samples.at(from, 1, i, bits));
    }

    @Override
    public void next(byte[] row) {
        byte[] above = next == 0 ? new byte[row.length] : rows[next - 1];
        PngFilter.apply(rows[next], above, distance, row);
        next++;
    }
}
