package bandwright.pipeline.pixels;

import bandwright.rules.paper.PrinterProfile;
import bandwright.rules.units.Rgb;
import java.awt.image.ColorConvertOp;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.nio.ByteBuffer;

/** Turns the numbers of a picture into a printer's inks, by its profile and what the numbers mean. */
public final class ToPrinter {
    private static final int RGB = 3;

    private final ToSrgb before;
    private final ColorConvertOp op;
    private final int sourceComponents;
    private final int components;

    private ToPrinter(ToSrgb before, ColorConvertOp op, int sourceComponents, int components) {
        this.before = before;
        this.op = op;
        this.sourceComponents = sourceComponents;
        this.components = components;
    }

    /** From what a picture's numbers mean; from its own profile where it brings one, else by way of sRGB. */
    public static ToPrinter of(PictureColour colour, PrinterProfile printer) {
        if (colour instanceof PictureColour.Profiled own && !printer.isAbsolute()) {
            byte[] bytes = new byte[own.profile().remaining()];
            own.profile().duplicate().get(bytes);
            try {
                return new ToPrinter(ToSrgb.NOTHING_TO_DO, printer.from(bytes), own.components(), printer.components());
            } catch (IllegalArgumentException e) {
                return bySrgb(ToSrgb.NOTHING_TO_DO, printer); // no engine can use it: the numbers are taken for sRGB
            }
        }
        return bySrgb(ToSrgb.of(colour), printer);
    }

    /** From sRGB. */
    public static ToPrinter ofSrgb(PrinterProfile printer) {
        return bySrgb(ToSrgb.NOTHING_TO_DO, printer);
    }

    private static ToPrinter bySrgb(ToSrgb before, PrinterProfile printer) {
        return new ToPrinter(before, printer.from(SrgbProfile.bytes()), RGB, printer.components());
    }

    /** How many inks a pixel has: 3 or 4. */
    public int components() {
        return components;
    }

    /**
     * The inks of some pixels, one byte a component.
     *
     * @param argb alpha, red, green, blue of each; alpha is left out
     */
    public byte[] inks(int[] argb) {
        int[] seen = before.converted(argb);
        byte[] from = new byte[seen.length * sourceComponents];
        for (int i = 0, b = 0; i < seen.length; i++) {
            for (int c = 0; c < sourceComponents; c++) {
                from[b++] = (byte) (seen[i] >> (16 - 8 * c));
            }
        }
        WritableRaster source = Raster.createInterleavedRaster(
                new DataBufferByte(from, from.length),
                seen.length,
                1,
                from.length,
                sourceComponents,
                sourceComponents == 1 ? new int[] {0} : new int[] {0, 1, 2},
                null);
        WritableRaster inks = Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, seen.length, 1, components, null);
        op.filter(source, inks);
        return ((DataBufferByte) inks.getDataBuffer()).getData();
    }

    /** The inks of one colour, each 0 to 255. */
    public ByteBuffer inks(Rgb colour) {
        return ByteBuffer.wrap(inks(new int[] {(colour.red() << 16) | (colour.green() << 8) | colour.blue()}))
                .asReadOnlyBuffer();
    }
}
