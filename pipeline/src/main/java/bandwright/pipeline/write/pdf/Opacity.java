package bandwright.pipeline.write.pdf;

import bandwright.pipeline.artwork.PngColour;
import bandwright.pipeline.artwork.PngHeader;
import bandwright.pipeline.pixels.PngFilter;
import bandwright.pipeline.pixels.RowSource;
import bandwright.pipeline.pixels.Samples;
import java.io.IOException;
import java.util.Arrays;

/** How opaque a pixel of a plain row is where tRNS says it: by palette entry, or by one colour that isn't painted. */
final class Opacity {
    private final PngHeader header;
    private final byte[] said;

    /** @param said the content of tRNS: a byte a palette entry, or one colour of two bytes a sample */
    Opacity(PngHeader header, byte[] said) {
        this.header = header;
        this.said = said.clone();
    }

    /** 1 where every pixel is either painted or not, else 8. */
    int maskBits() {
        return isAllOrNothing() ? 1 : 8;
    }

    /** Writes the plain rows of a mask. */
    void writeMask(RowSource rows, Repacked out) throws IOException {
        int bits = maskBits();
        int distance = Math.max(1, header.bitsPerPixel() / 8);
        byte[] above = new byte[1 + header.rowBytes()];
        byte[] row = new byte[above.length];
        for (int y = 0; y < header.height(); y++) {
            rows.next(row);
            PngFilter.undo(row, above, distance);
            byte[] line = new byte[(header.width() * bits + 7) / 8];
            for (int x = 0; x < header.width(); x++) {
                int sample = at(row, x) >> (8 - bits);
                Samples.put(line, 0, x, bits, sample);
            }
            out.write(line);
            byte[] free = above;
            above = row;
            row = free;
        }
    }

    private boolean isAllOrNothing() {
        if (header.colour() != PngColour.PALETTE) {
            return true;
        }
        for (byte alpha : said) {
            if (alpha != 0 && alpha != -1) {
                return false;
            }
        }
        return true;
    }

    /** 0 to 255. */
    private int at(byte[] row, int x) {
        if (header.colour() == PngColour.PALETTE) {
            int bits = header.bits();
            int index = Samples.at(row, 1, x, bits);
            return index < said.length ? said[index] & 0xFF : 255;
        }
        int from = 1 + x * said.length;
        return Arrays.equals(row, from, from + said.length, said, 0, said.length) ? 0 : 255;
    }
}
