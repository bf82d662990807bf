package bandwright.pipeline.pixels;

import java.awt.color.CMMException;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.ColorConvertOp;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.nio.ByteBuffer;
import java.util.List;

/** Turns the numbers of a picture into sRGB, for eyes and for whatever is judged by the look; never for the print. */
abstract class ToSrgb {
    /** For numbers that are sRGB already. */
    static final ToSrgb NOTHING_TO_DO = new AsItIs();

    private static final int LARGEST = 255;

    /** Pixels of alpha, red, green and blue; grey stands in all three colours. Alpha stays. */
    abstract int[] converted(int[] argb);

    static ToSrgb of(PictureColour colour) {
        if (colour instanceof PictureColour.Palette palette) {
            return of(palette.base());
        }
        if (colour instanceof PictureColour.Profiled own) {
            return new ByProfile(own.profile(), own.components());
        }
        if (colour instanceof PictureColour.CalibratedRgb own) {
            return new ByMatrix(own.gamma(), own.white(), own.matrix());
        }
        if (colour instanceof PictureColour.CalibratedGrey own) {
            return new ByCurve(own.gamma());
        }
        return NOTHING_TO_DO;
    }

    private static final class AsItIs extends ToSrgb {
        @Override
        int[] converted(int[] argb) {
            return argb;
        }
    }

    /** Grey by its own curve. */
    private static final class ByCurve extends ToSrgb {
        private final double gamma;

        ByCurve(double gamma) {
            this.gamma = gamma;
        }

        @Override
        int[] converted(int[] argb) {
            int[] seen = new int[LARGEST + 1];
            for (int i = 0; i <= LARGEST; i++) {
                seen[i] = encoded(Math.pow(i / (double) LARGEST, gamma));
            }
            int[] out = new int[argb.length];
            for (int i = 0; i < out.length; i++) {
                out[i] = (argb[i] & 0xFF000000) | (seen[argb[i] & LARGEST] * 0x010101);
            }
            return out;
        }
    }

    /** By own primaries and curve, the own white becoming sRGB's by scaling each of XYZ. */
    private static final class ByMatrix extends ToSrgb {
        /** From XYZ of D65 to linear light of sRGB (IEC 61966-2-1). */
        private static final double[][] FROM_XYZ = {
            {3.2406, -1.5372, -0.4986}, {-0.9689, 1.8758, 0.0415}, {0.0557, -0.2040, 1.0570}
        };

        private static final double[] D65 = {0.9505, 1.0, 1.0890};

        private final double[] light = new double[LARGEST + 1];
        private final double[][] matrix = new double[3][3];

        ByMatrix(double gamma, List<Double> white, List<Double> toXyz) {
            for (int i = 0; i <= LARGEST; i++) {
                light[i] = Math.pow(i / (double) LARGEST, gamma);
            }
            for (int row = 0; row < 3; row++) {
                for (int column = 0; column < 3; column++) {
                    for (int k = 0; k < 3; k++) {
                        matrix[row][column] += FROM_XYZ[row][k] * D65[k] / white.get(k) * toXyz.get(3 * column + k);
                    }
                }
            }
        }

        @Override
        int[] converted(int[] argb) {
            int[] out = new int[argb.length];
            for (int i = 0; i < out.length; i++) {
                int pixel = argb[i];
                out[i] =
                        (pixel & 0xFF000000) | (channel(0, pixel) << 16) | (channel(1, pixel) << 8) | channel(2, pixel);
            }
            return out;
        }

        private int channel(int row, int pixel) {
            return encoded(matrix[row][0] * light[pixel >> 16 & LARGEST]
                    + matrix[row][1] * light[pixel >> 8 & LARGEST]
                    + matrix[row][2] * light[pixel & LARGEST]);
        }
    }

    /** By the profile that the picture brings; one that can't be used leaves the numbers as they are. */
    private static final class ByProfile extends ToSrgb {
        private final ByteBuffer profile;
        private final int components;

        ByProfile(ByteBuffer profile, int components) {
            this.profile = profile;
            this.components = components;
        }

        @Override
        int[] converted(int[] argb) {
            byte[] copy = new byte[profile.remaining()];
            profile.duplicate().get(copy);
            try {
                ICC_Profile own = ICC_Profile.getInstance(copy);
                ICC_Profile srgb = ICC_Profile.getInstance(ColorSpace.CS_sRGB);
                return converted(argb, new ColorConvertOp(new ICC_Profile[] {own, srgb}, null));
            } catch (IllegalArgumentException | CMMException e) {
                return argb;
            }
        }

        private int[] converted(int[] argb, ColorConvertOp op) {
            byte[] bytes = new byte[argb.length * components];
            for (int i = 0, b = 0; i < argb.length; i++) {
                for (int c = 0; c < components; c++) {
                    bytes[b++] = (byte) (argb[i] >> (16 - 8 * c));
                }
            }
            WritableRaster from = Raster.createInterleavedRaster(
                    new DataBufferByte(bytes, bytes.length),
                    argb.length,
                    1,
                    bytes.length,
                    components,
                    offsets(components),
                    null);
            WritableRaster to = Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, argb.length, 1, 3, null);
            op.filter(from, to);
            byte[] seen = ((DataBufferByte) to.getDataBuffer()).getData();
            int[] out = new int[argb.length];
            for (int i = 0, b = 0; i < out.length; i++, b += 3) {
                out[i] = (argb[i] & 0xFF000000)
                        | ((seen[b] & LARGEST) << 16)
                        | ((seen[b + 1] & LARGEST) << 8)
                        | (seen[b + 2] & LARGEST);
            }
            return out;
        }

        private static int[] offsets(int components) {
            int[] offsets = new int[components];
            for (int i = 0; i < components; i++) {
                offsets[i] = i;
            }
            return offsets;
        }
    }

    /** IEC 61966-2-1, 5.2, the other way round. */
    private static int encoded(double light) {
        double clipped = Math.max(0, Math.min(1, light));
        double encoded = clipped <= 0.0031308 ? 12.92 * clipped : 1.055 * Math.pow(clipped, 1 / 2.4) - 0.055;
        return (int) Math.round(LARGEST * encoded);
    }
}
