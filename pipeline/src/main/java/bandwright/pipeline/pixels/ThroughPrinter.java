package bandwright.pipeline.pixels;

import bandwright.rules.paper.PrinterProfile;
import java.awt.color.CMMException;
import java.awt.image.ColorConvertOp;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.util.Optional;

/** What is left of colours once a printer has made them of its inks, the paper being white. */
public final class ThroughPrinter {
    private static final int RGB = 3;

    private final ToPrinter inks;
    private final ColorConvertOp back;

    private ThroughPrinter(ToPrinter inks, ColorConvertOp back) {
        this.inks = inks;
        this.back = back;
    }

    /** By a printer's profile, relative colorimetrically; empty if the profile has only the way to the inks. */
    public static Optional<ThroughPrinter> of(PrinterProfile printer) {
        try {
            ThroughPrinter through = new ThroughPrinter(ToPrinter.ofSrgb(printer.colorimetric()), printer.toSrgb());
            through.seen(new int[1]);
            return Optional.of(through);
        } catch (CMMException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** Colours of sRGB as they come out, 0xRRGGBB. */
    public int[] seen(int[] rgb) {
        if (rgb.length == 0) {
            return rgb;
        }
        byte[] made = inks.inks(rgb);
        WritableRaster from = Raster.createInterleavedRaster(
                new DataBufferByte(made, made.length),
                rgb.length,
                1,
                made.length,
                inks.components(),
                inks.components() == RGB ? new int[] {0, 1, 2} : new int[] {0, 1, 2, 3},
                null);
        WritableRaster to = Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, rgb.length, 1, RGB, null);
        back.filter(from, to);
        byte[] out = ((DataBufferByte) to.getDataBuffer()).getData();
        int[] seen = new int[rgb.length];
        for (int i = 0; i < seen.length; i++) {
            seen[i] = ((out[RGB * i] & 255) << 16) | ((out[RGB * i + 1] & 255) << 8) | (out[RGB * i + 2] & 255);
        }
        return seen;
    }
}
