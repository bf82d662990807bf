package bandwright.pipeline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pages of plain paper that a shop measures with, held to their scale. */
final class MeasuringPagesTest {
    /** Ten pixels a millimetre. */
    private static final int DPI = 254;

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int bandwright(String... words) {
        return Main.run(new PrintWriter(out), new PrintWriter(err), false, words);
    }

    private Path pdf(String... words) {
        Path file = folder.resolve("page.pdf");
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--out", file.toString()));
        assertThat(bandwright(all.toArray(String[]::new))).as(err.toString()).isZero();
        return file;
    }

    @Test
    void theBandsOutlineHasItsTrueSize() throws IOException {
        // 210.21 x 90 mm.
        BufferedImage page = drawn(pdf("strip", "MUG-11-W"), 0);
        assertThat(longestAcross(page)).isBetween(2100, 2105);
        assertThat(longestUp(page)).isBetween(898, 905);
    }

    @Test
    void aConesStripIsItsSector() throws IOException {
        BufferedImage page = drawn(pdf("strip", "CONE-12-W"), 0);
        int[] bounds = ink(page);
        // Its sector takes 238.7 x 108.51 mm.
        assertThat(bounds[2] - bounds[0]).isBetween(2384, 2392);
        assertThat(bounds[3] - bounds[1]).isBetween(1082, 1090);
    }

    @Test
    void theStripSaysWhatToCompare() throws IOException {
        String words = words(pdf("strip", "MUG-11-W"));
        assertThat(words)
                .contains("Rim edge: this way up")
                .contains("210.21 mm")
                .contains("Gap at the handle 47.4 mm")
                .contains("257.61 - 22 - 2 x 12.7 = 210.21 mm")
                .contains("It must read 257.61 mm")
                .contains("nothing of it goes under heat");
    }

    /** Wrapped outside a wall of 80 mm, paper of 0.1 mm reads pi x (80 + 0.1): 0.31 mm more than the wall has. */
    @Test
    void theTapesScaleTakesThePapersThicknessOff() throws IOException {
        List<Double> ticks = new ArrayList<>();
        BufferedImage page = drawn(pdf("strip", "MUG-11-W"), 1);
        // Along the first tape's upper edge: where its long ticks stand, in millimetres from the start line.
        int row = tapeRow(page);
        double start = -1;
        for (int x = 0; x < page.getWidth(); x++) {
            if (isDark(page, x, row)) {
                int end = x;
                while (end < page.getWidth() && isDark(page, end, row)) {
                    end++;
                }
                double middle = (x + end) / 2.0;
                if (start < 0) {
                    start = middle;
                } else {
                    ticks.add((middle - start) / 10);
                }
                x = end;
            }
        }
        assertThat(ticks).hasSizeGreaterThan(20);
        assertThat(ticks.get(0)).isBetween(10.2, 10.45);
        assertThat(ticks.get(19)).isBetween(200.2, 200.45);
    }

    @ParameterizedTest
    @CsvSource({"strip, MUG-11-W", "strip, CONE-12-W", "strip, COAST-S", "ruler, ''"})
    void nothingIsMirrored(String command, String sku) throws IOException {
        Path page = sku.isEmpty() ? pdf(command) : pdf(command, sku);
        try (PDDocument document = Loader.loadPDF(page.toFile())) {
            List<Double> turns = new ArrayList<>();
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition text) {
                    var m = text.getTextMatrix();
                    turns.add((double) m.getScaleX() * m.getScaleY() - m.getShearX() * m.getShearY());
                }
            }.getText(document);
            assertThat(turns).hasSizeGreaterThan(40).allMatch(turn -> turn > 0);
        }
    }

    @Test
    void theRulersBarsMeasureTrueWhateverTheRowSays() throws IOException {
        Path rules = Files.createDirectories(folder.resolve("rules"));
        Files.writeString(
                rules.resolve("printers.csv"), "id,papers,mirror,scale_x,scale_y\ndesk,a4,driver,0.98,1.02\n");
        BufferedImage page = drawn(pdf("ruler", "--rules", rules.toString(), "--paper", "a4"), 0);
        assertThat(longestAcross(page)).isBetween(1999, 2001);
        assertThat(longestUp(page)).isBetween(1999, 2001);
        assertThat(words(folder.resolve("page.pdf"))).contains("mirror driver").contains("200 mm across");
    }

    @Test
    void whatWasMeasuredBecomesTheCellsOfTheTable() {
        assertThat(bandwright("ruler", "--measured", "199.2 x 198,7 mm")).isZero();
        assertThat(out.toString()).contains("row desk: scale_x 0.9960, scale_y 0.9935.");
    }

    @ParameterizedTest
    @CsvSource({"7.8x7.9, more than 5 % off", "200, is no pair", "200x, is no pair", "20x200, more than 5 % off"})
    void whatNobodyCanHaveMeasuredIsAskedBack(String measured, String why) {
        assertThat(bandwright("ruler", "--measured", measured)).isEqualTo(2);
        assertThat(err.toString()).hasLineCount(1).contains(why);
    }

    @Test
    void anotherFileIsLeftAlone() throws IOException {
        Path file = Files.writeString(folder.resolve("orders.csv"), "Order,SKU\n");
        assertThat(bandwright("strip", "MUG-11-W", "--out", file.toString())).isEqualTo(2);
        assertThat(err.toString()).hasLineCount(1).contains("left alone");
        assertThat(file).hasContent("Order,SKU\n");
        // Its own page is replaced, with the same bytes.
        byte[] first = Files.readAllBytes(pdf("strip", "MUG-11-W"));
        assertThat(Files.readAllBytes(pdf("strip", "MUG-11-W"))).isEqualTo(first);
    }

    @Test
    void aStripOfASourceThatIsOutOfReachSaysWhy() {
        assertThat(bandwright("strip", "STEIN-16-F", "--heat-source", "clamp")).isEqualTo(2);
        assertThat(err.toString()).hasLineCount(1).contains("STEIN-16-F can't be pressed in clamp");
        err.getBuffer().setLength(0);
        assertThat(bandwright("strip", "MUG-11-W", "--heat-source", "ovne")).isEqualTo(2);
        assertThat(err.toString()).contains("Did you mean oven?");
    }

    private static BufferedImage drawn(Path pdf, int page) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new PDFRenderer(document).renderImageWithDPI(page, DPI);
        }
    }

    private static String words(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    private static boolean isDark(BufferedImage page, int x, int y) {
        return (page.getRGB(x, y) & 255) < 128;
    }

    private static int longestAcross(BufferedImage page) {
        int longest = 0;
        for (int y = 0; y < page.getHeight(); y++) {
            int run = 0;
            for (int x = 0; x < page.getWidth(); x++) {
                run = isDark(page, x, y) ? run + 1 : 0;
                longest = Math.max(longest, run);
            }
        }
        return longest;
    }

    private static int longestUp(BufferedImage page) {
        int longest = 0;
        for (int x = 0; x < page.getWidth(); x++) {
            int run = 0;
            for (int y = 0; y < page.getHeight(); y++) {
                run = isDark(page, x, y) ? run + 1 : 0;
                longest = Math.max(longest, run);
            }
        }
        return longest;
    }

    private static int[] ink(BufferedImage page) {
        int[] bounds = {page.getWidth(), page.getHeight(), 0, 0};
        for (int y = 0; y < page.getHeight(); y++) {
            for (int x = 0; x < page.getWidth(); x++) {
                if (isDark(page, x, y)) {
                    bounds[0] = Math.min(bounds[0], x);
                    bounds[1] = Math.min(bounds[1], y);
                    bounds[2] = Math.max(bounds[2], x + 1);
                    bounds[3] = Math.max(bounds[3], y + 1);
                }
            }
        }
        return bounds;
    }

    /** The row that only the ticks of a whole centimetre reach: 4.2 mm under the upper edge of the first tape. */
    private static int tapeRow(BufferedImage page) {
        for (int y = 0; y < page.getHeight(); y++) {
            int run = 0;
            for (int x = 0; x < page.getWidth(); x++) {
                run = isDark(page, x, y) ? run + 1 : 0;
                if (run > 2000) {
                    return y + 42;
                }
            }
        }
        throw new AssertionError("no tape");
    }
}
