package bandwright.pipeline.artwork;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * Whether a PNG's data unpack to all its rows. Sound chunks may still hold a broken or short stream, and a picture that
 * goes into a document as it is would then print partly blank. Nothing is kept of what is unpacked.
 */
final class PngPixels {
    private static final int BUFFER = 1 << 16;

    /** Of each pass of an interlaced picture: first column, first row, step of columns, of rows (ISO/IEC 15948, 8.2). */
    private static final int[][] PASSES = {
        {0, 0, 8, 8}, {4, 0, 8, 8}, {0, 4, 4, 8}, {2, 0, 4, 4}, {0, 2, 2, 4}, {1, 0, 2, 2}, {0, 1, 1, 2}
    };

    /** Rows of one length, the filter's byte counted. */
    private record Rows(long length, long count) {}

    private final List<Rows> rows;
    private int part;
    private long rowsLeft;
    private long untilFilter;

    private PngPixels(List<Rows> rows) {
        this.rows = rows;
        this.rowsLeft = rows.get(0).count();
    }

    static void require(PictureBytes bytes, PngHeader header) throws IOException {
        PngPixels pixels = new PngPixels(rows(header));
        Inflater inflater = new Inflater();
        try {
            byte[] out = new byte[BUFFER];
            for (Span span : header.data()) {
                for (long at = span.at(); at < span.end() && !inflater.finished(); at += BUFFER) {
                    inflater.setInput(bytes.bytes(new Span(at, Math.min(BUFFER, span.end() - at))));
                    for (int count = inflater.inflate(out); count > 0; count = inflater.inflate(out)) {
                        pixels.take(out, count);
                    }
                    if (inflater.needsDictionary()) {
                        throw new RefusedPicture(Flaw.DAMAGED);
                    }
                }
            }
        } catch (DataFormatException e) {
            throw new RefusedPicture(Flaw.DAMAGED);
        } finally {
            inflater.end();
        }
        if (!pixels.areAll()) {
            throw new RefusedPicture(Flaw.CUT_SHORT);
        }
    }

    private static List<Rows> rows(PngHeader header) {
        if (!header.interlaced()) {
            return List.of(new Rows(1L + header.rowBytes(), header.height()));
        }
        List<Rows> rows = new ArrayList<>();
        for (int[] pass : PASSES) {
            int width = (header.width() - pass[0] + pass[2] - 1) / pass[2];
            int height = (header.height() - pass[1] + pass[3] - 1) / pass[3];
            if (width > 0 && height > 0) {
                rows.add(new Rows(1L + header.rowBytes(width), height));
            }
        }
        return rows;
    }

    /** Follows the rows through what was unpacked; every one begins with its filter, 0 to 4. More than all is ignored. */
    private void take(byte[] out, int count) throws RefusedPicture {
        int at = 0;
        while (at < count && !areAll()) {
            if (untilFilter == 0) {
                if (out[at] < 0 || out[at] > 4) {
                    throw new RefusedPicture(Flaw.DAMAGED);
                }
                untilFilter = rows.get(part).length();
            }
            long step = Math.min(untilFilter, count - at);
            untilFilter -= step;
            at += (int) step;
            if (untilFilter == 0) {
                endRow();
            }
        }
    }

    private void endRow() {
        rowsLeft--;
        if (rowsLeft == 0 && ++part < rows.size()) {
            rowsLeft = rows.get(part).count();
        }
    }

    private boolean areAll() {
        return part >= rows.size();
    }
}
