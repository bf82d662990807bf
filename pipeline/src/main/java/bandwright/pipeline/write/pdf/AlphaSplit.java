package bandwright.pipeline.write.pdf;

import bandwright.pipeline.artwork.PngHeader;
import bandwright.pipeline.pixels.PngFilter;
import bandwright.pipeline.pixels.RowSource;
import java.io.IOException;

/**
 * Parts colour and alpha of a PNG without computing a pixel: PNG's filters work byte by byte at the distance of one
 * pixel (ISO/IEC 15948, 9.2), so the colour bytes of a filtered row are a row of the same filter, and so are its alpha
 * bytes.
 */
final class AlphaSplit {
    private final Repacked colours;
    private final Repacked alphas;
    private final int height;
    private final int colourBytes;
    private final int alphaBytes;
    private final byte[] row;
    private final byte[] colour;
    private final byte[] alpha;
    private byte[] plainAlpha;
    private byte[] alphaAbove;

    AlphaSplit(PngHeader header, Repacked colours, Repacked alphas) {
        this.colours = colours;
        this.alphas = alphas;
        height = header.height();
        alphaBytes = header.bits() / 8;
        colourBytes = (header.colour().channels() - 1) * alphaBytes;
        row = new byte[1 + header.rowBytes()];
        colour = new byte[1 + header.width() * colourBytes];
        alpha = new byte[1 + header.width() * alphaBytes];
        plainAlpha = new byte[alpha.length];
        alphaAbove = new byte[alpha.length];
    }

    /** Writes all rows; true = every pixel is opaque, the alpha rows can be left out. */
    boolean splitAll(RowSource rows) throws IOException {
        boolean opaque = true;
        for (int y = 0; y < height; y++) {
            rows.next(row);
            split();
            colours.write(colour);
            alphas.write(alpha);
            opaque = opaque && isOpaque();
        }
        return opaque;
    }

    private void split() {
        colour[0] = row[0];
        alpha[0] = row[0];
        int c = 1;
        int a = 1;
        for (int in = 1; in < row.length; ) {
            for (int k = 0; k < colourBytes; k++) {
                colour[c++] = row[in++];
            }
            for (int k = 0; k < alphaBytes; k++) {
                alpha[a++] = row[in++];
            }
        }
    }

    private boolean isOpaque() throws IOException {
        System.arraycopy(alpha, 0, plainAlpha, 0, alpha.length);
        PngFilter.undo(plainAlpha, alphaAbove, alphaBytes);
        for (int i = 1; i < plainAlpha.length; i++) {
            if (plainAlpha[i] != -1) {
                return false;
            }
        }
        byte[] free = alphaAbove;
        alphaAbove = plainAlpha;
        plainAlpha = free;
        return true;
    }
}
