package bandwright.pipeline.pixels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bandwright.pipeline.shop.Stall;
import bandwright.rules.paper.PrinterProfile;
import bandwright.rules.units.Rgb;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From what numbers mean to a printer's inks; the inks themselves are held against another program's elsewhere. */
final class ToPrinterTest {
    @TempDir
    Path folder;

    @Test
    void aPrinterOfSrgbTakesSrgbAsItIs() throws Exception {
        ByteBuffer inks = ToPrinter.ofSrgb(profile(ColorSpace.CS_sRGB)).inks(new Rgb(12, 130, 240));
        assertThat(inks.get(0) & 0xFF).isCloseTo(12, within(1));
        assertThat(inks.get(1) & 0xFF).isCloseTo(130, within(1));
        assertThat(inks.get(2) & 0xFF).isCloseTo(240, within(1));
    }

    /** A picture that says that it holds linear light goes to a printer of linear light unchanged. */
    @Test
    void aPicturesOwnProfileIsObeyed() throws Exception {
        byte[] light = ICC_Profile.getInstance(ColorSpace.CS_LINEAR_RGB).getData();
        PictureColour linear = new PictureColour.Profiled(ByteBuffer.wrap(light), 3);
        byte[] own = ToPrinter.of(linear, profile(ColorSpace.CS_LINEAR_RGB)).inks(new int[] {0xFF_40_80_C0});
        assertThat(own[0] & 0xFF).isCloseTo(0x40, within(1));
        assertThat(own[1] & 0xFF).isCloseTo(0x80, within(1));
        assertThat(own[2] & 0xFF).isCloseTo(0xC0, within(1));
        byte[] plain = ToPrinter.of(new PictureColour.Srgb(), profile(ColorSpace.CS_LINEAR_RGB))
                .inks(new int[] {0xFF_40_80_C0});
        assertThat(plain[1] & 0xFF).isLessThan(0x40);
    }

    @Test
    void whatNoEngineCanReadIsTakenForSrgb() throws Exception {
        PictureColour broken = new PictureColour.Profiled(ByteBuffer.wrap(new byte[200]), 3);
        byte[] inks = ToPrinter.of(broken, profile(ColorSpace.CS_sRGB)).inks(new int[] {0xFF_40_80_C0});
        assertThat(inks[1] & 0xFF).isCloseTo(0x80, within(1));
    }

    private PrinterProfile profile(int space) throws Exception {
        Stall stall = new Stall(folder)
                .table(
                        "printers.csv",
                        "id,papers,mirror,colour,icc_profile",
                        "desk,letter,file,profile,ink.icc",
                        "wide,13x19,driver,driver,");
        Files.write(
                folder.resolve("tables/ink.icc"), ICC_Profile.getInstance(space).getData());
        return stall.rules().printers().list().get(0).profile().orElseThrow();
    }
}
