package bandwright.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import bandwright.pipeline.pixels.PictureColour;
import bandwright.pipeline.pixels.SrgbProfile;
import bandwright.pipeline.pixels.ThroughPrinter;
import bandwright.pipeline.pixels.ToPrinter;
import bandwright.pipeline.size.Layer;
import bandwright.pipeline.size.colour.GamutLoss;
import bandwright.pipeline.size.colour.Print;
import bandwright.rules.Rulebook;
import bandwright.rules.paper.PrinterProfile;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import bandwright.rules.units.Rgb;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Conversions by profile beside those of LittleCMS's own tool, for each rendering intent, within 1 of 255. */
final class PrinterProfileTest {
    private static final int[] STEPS = {0, 40, 128, 200, 255};

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"perceptual,0", "relative colorimetric,1", "saturation,2", "absolute colorimetric,3"})
    void inksAreThoseOfAnotherProgram(String intent, int number) throws Exception {
        assumeTrue(Programs.has("transicc"), "needs LittleCMS's utilities");
        Files.write(folder.resolve("srgb.icc"), SrgbProfile.bytes());
        byte[] inks = ToPrinter.ofSrgb(profile(InkProfile.bytes(), intent)).inks(colours());
        assertAlike(inks, littleCms("srgb.icc", number));
        assertThat(differing(inks, littleCms("srgb.icc", (number + 1) % 4)))
                .as("and another intent is seen")
                .isGreaterThan(50);
    }

    @Test
    void aPicturesOwnProfileGoesStraightToTheInks() throws Exception {
        assumeTrue(Programs.has("transicc"), "needs LittleCMS's utilities");
        byte[] light = ICC_Profile.getInstance(ColorSpace.CS_LINEAR_RGB).getData();
        Files.write(folder.resolve("light.icc"), light);
        PictureColour colour = new PictureColour.Profiled(ByteBuffer.wrap(light), 3);
        PrinterProfile printer = profile(InkProfile.bytes(), "relative colorimetric");
        assertAlike(ToPrinter.of(colour, printer).inks(colours()), littleCms("light.icc", 1));
    }

    /** There and back, as the other program goes it: what the inks can't make comes back as another colour. */
    @Test
    void whatAPrinterLeavesOfAColourIsWhatAnotherProgramSays() throws Exception {
        assumeTrue(Programs.has("transicc"), "needs LittleCMS's utilities");
        Files.write(folder.resolve("srgb.icc"), SrgbProfile.bytes());
        PrinterProfile printer = profile(InkProfile.bytes(), "perceptual");
        int[] seen = ThroughPrinter.of(printer).orElseThrow().seen(new int[] {0xC83232, 0x808080, 0xFFFFFF});
        List<double[]> inks = littleCms("srgb.icc", 1);
        double[] grey = inks.get(62); // 128, 128, 128 of the grid
        String back = said(
                grey[0] + "\n" + grey[1] + "\n" + grey[2] + "\n" + grey[3] + "\n",
                "transicc",
                "-i",
                "tables/ink.icc",
                "-o",
                "srgb.icc",
                "-t",
                "1",
                "-n");
        String[] parts = back.strip()
                .lines()
                .reduce((one, last) -> last)
                .orElseThrow()
                .strip()
                .split("\\s+", -1);
        assertThat(seen[1] >> 16 & 255).isCloseTo((int) Math.round(Double.parseDouble(parts[0])), within(3));
        assertThat(seen[1] >> 8 & 255).isCloseTo((int) Math.round(Double.parseDouble(parts[1])), within(3));
        assertThat(seen[1] & 255).isCloseTo((int) Math.round(Double.parseDouble(parts[2])), within(3));
    }

    @Test
    void coloursThatInksCantMakeAreCounted() throws Exception {
        Box box = Box.of(Length.mm(10), Length.mm(10));
        Print red = Print.of(List.of(new Layer.Fill(box, new Rgb(0xC8, 0x32, 0x32))), any -> Optional.empty())
                .orElseThrow();
        assertThat(GamutLoss.share(red, profile(InkProfile.bytes(), "perceptual")))
                .hasValue(1);
        assertThat(GamutLoss.share(red, profile(SrgbProfile.bytes(), "perceptual")))
                .hasValue(0);
    }

    private String said(String typed, String... command) throws IOException {
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try (OutputStream out = process.getOutputStream()) {
            out.write(typed.getBytes(StandardCharsets.US_ASCII));
        }
        return new String(process.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
    }

    private PrinterProfile profile(byte[] bytes, String intent) throws Exception {
        Path tables = Files.createDirectories(folder.resolve("tables"));
        Files.write(tables.resolve("ink.icc"), bytes);
        Files.writeString(
                tables.resolve("printers.csv"),
                "id,papers,mirror,colour,icc_profile,intent\ndesk,letter,file,profile,ink.icc," + intent
                        + "\nwide,13x19,driver,driver,,\n");
        return Rulebook.read(Optional.of(tables))
                .printers()
                .find("desk")
                .flatMap(printer -> printer.profile())
                .orElseThrow();
    }

    private static int[] colours() {
        List<Integer> all = new ArrayList<>();
        for (int red : STEPS) {
            for (int green : STEPS) {
                for (int blue : STEPS) {
                    all.add(0xFF << 24 | red << 16 | green << 8 | blue);
                }
            }
        }
        return all.stream().mapToInt(Integer::intValue).toArray();
    }

    /** Four inks of each colour, in per cent. */
    private List<double[]> littleCms(String source, int intent) throws IOException {
        StringBuilder typed = new StringBuilder();
        for (int colour : colours()) {
            typed.append(colour >> 16 & 255).append('\n');
            typed.append(colour >> 8 & 255).append('\n');
            typed.append(colour & 255).append('\n');
        }
        String said = said(
                typed.toString(), "transicc", "-i", source, "-o", "tables/ink.icc", "-t", String.valueOf(intent), "-n");
        List<double[]> inks = new ArrayList<>();
        for (String line : said.split("\n", -1)) {
            String[] parts = line.strip().split("\\s+", -1);
            if (parts.length == 4 && parts[0].matches("[0-9.]+")) {
                inks.add(new double[] {
                    Double.parseDouble(parts[0]),
                    Double.parseDouble(parts[1]),
                    Double.parseDouble(parts[2]),
                    Double.parseDouble(parts[3])
                });
            }
        }
        return inks;
    }

    private static void assertAlike(byte[] inks, List<double[]> theirs) {
        assertThat(theirs).hasSize(inks.length / 4);
        for (int i = 0; i < inks.length; i++) {
            assertThat((inks[i] & 255) / 2.55)
                    .as("colour %d, ink %d", i / 4, i % 4)
                    .isCloseTo(theirs.get(i / 4)[i % 4], within(1 / 2.55));
        }
    }

    private static int differing(byte[] inks, List<double[]> theirs) {
        int differing = 0;
        for (int i = 0; i < inks.length; i++) {
            differing += Math.abs((inks[i] & 255) / 2.55 - theirs.get(i / 4)[i % 4]) > 1 ? 1 : 0;
        }
        return differing;
    }
}
