package bandwright.pipeline.pixels;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.ColorConvertOp;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.nio.ByteBuffer;
import org.junit.jupiter.api.Test;

class SrgbProfileTest {
    @Test
    void aColourEngineTakesItForSrgb() {
        ICC_Profile own = ICC_Profile.getInstance(SrgbProfile.bytes());
        ICC_Profile builtIn = ICC_Profile.getInstance(ColorSpace.CS_sRGB);
        int side = 17;
        WritableRaster in = Raster.createInterleavedRaster(0, side * side * side, 1, 3, null);
        for (int i = 0; i < side * side * side; i++) {
            in.setPixel(i, 0, new int[] {i % side * 255 / 16, i / side % side * 255 / 16, i / side / side * 255 / 16});
        }
        WritableRaster out = in.createCompatibleWritableRaster();
        new ColorConvertOp(new ICC_Profile[] {own, builtIn}, null).filter(in, out);
        for (int i = 0; i < side * side * side; i++) {
            for (int c = 0; c < 3; c++) {
                assertThat(Math.abs(in.getSample(i, 0, c) - out.getSample(i, 0, c)))
                        .as("colour %s", i)
                        .isLessThanOrEqualTo(1);
            }
        }
    }

    /** A linear profile would pass for neutral colours in a round trip through itself; half-way grey tells the curve. */
    @Test
    void midGreyIsAsDarkAsTheStandardSays() {
        float[] xyz = new ICC_ColorSpace(ICC_Profile.getInstance(SrgbProfile.bytes()))
                .toCIEXYZ(new float[] {0.5f, 0.5f, 0.5f});
        assertThat(xyz[1]).isBetween(0.2135f, 0.2146f); // ((0.5 + 0.055) / 1.055)^2.4 = 0.21404
    }

    @Test
    void itIsAWellFormedProfile() {
        assertThat(IccProfile.find(SrgbProfile.bytes(), 3)).contains(ByteBuffer.wrap(SrgbProfile.bytes()));
        assertThat(IccProfile.find(SrgbProfile.bytes(), 1)).isEmpty();
        assertThat(SrgbProfile.bytes().length).isLessThan(3_000);
    }
}
