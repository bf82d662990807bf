package bandwright.pipeline.pixels;

import java.awt.color.CMMException;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.ColorConvertOp;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceCMYK;

/**
 * Four inks as an eye sees them, in sRGB: by the profile that the picture brings, else by the one for offset printing
 * that the PDF library brings, as its own drawing does.
 */
final class FromInks {
    private static final String COMMON = "/org/apache/pdfbox/resources/icc/CGATS001Compat-v2-micro.icc";

    private final Optional<ColorConvertOp> op;

    private FromInks(Optional<ColorConvertOp> op) {
        this.op = op;
    }

    /** Ink takes light away, and nothing else is known. */
    static FromInks plain() {
        return new FromInks(Optional.empty());
    }

    static FromInks of(PictureColour colour) {
        if (colour instanceof PictureColour.Profiled own) {
            byte[] copy = new byte[own.profile().remaining()];
            own.profile().duplicate().get(copy);
            FromInks byOwn = new FromInks(op(copy));
            return byOwn.op.isPresent() ? byOwn : common();
        }
        return common();
    }

    private static FromInks common() {
        try (InputStream in = PDDeviceCMYK.class.getResourceAsStream(COMMON)) {
            return new FromInks(in == null ? Optional.empty() : op(in.readAllBytes()));
        } catch (IOException e) {
            return plain();
        }
    }

    /** Empty where the profile can't be used: that is found out by the first pixel. */
    private static Optional<ColorConvertOp> op(byte[] profile) {
        try {
            ICC_Profile srgb = ICC_Profile.getInstance(ColorSpace.CS_sRGB);
            ColorConvertOp op = new ColorConvertOp(new ICC_Profile[] {ICC_Profile.getInstance(profile), srgb}, null);
            filtered(op, new byte[4]);
            return Optional.of(op);
        } catch (IllegalArgumentException | CMMException e) {
            return Optional.empty();
        }
    }

    /** Three bytes for every four. */
    byte[] converted(byte[] inks) {
        return op.map(usable -> filtered(usable, inks)).orElseGet(() -> mixed(inks));
    }

    private static byte[] filtered(ColorConvertOp op, byte[] inks) {
        int pixels = inks.length / 4;
        WritableRaster from = Raster.createInterleavedRaster(
                new DataBufferByte(inks, inks.length), pixels, 1, inks.length, 4, new int[] {0, 1, 2, 3}, null);
        WritableRaster to = Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, pixels, 1, 3, null);
        op.filter(from, to);
        return ((DataBufferByte) to.getDataBuffer()).getData();
    }

    private static byte[] mixed(byte[] inks) {
        byte[] seen = new byte[inks.length / 4 * 3];
        for (int i = 0, s = 0; i + 3 < inks.length; i += 4) {
            int light = 255 - (inks[i + 3] & 255);
            for (int c = 0; c < 3; c++) {
                seen[s++] = (byte) ((255 - (inks[i + c] & 255)) * light / 255);
            }
        }
        return seen;
    }
}
