package bandwright.pipeline.write.pdf;

import bandwright.pipeline.artwork.PngColour;
import bandwright.pipeline.artwork.PngHeader;
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

    /** Whether every pixel is either painted or not. */
    boolean isAllOrNothing() {
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
    int at(byte[] row, int x) {
        if (header.colour() == PngColour.PALETTE) {
            int bits = header.bits();
            int index = row[1 + x * bits / 8] >> 8 - bits - x * bits % 8 & (1 << bits) - 1;
            return index < said.length ? said[index] & 0xFF : 255;
        }
        int from = 1 + x * said.length;
        return Arrays.equals(row, from, from + said.length, said, 0, said.length) ? 0 : 255;
    }
}
