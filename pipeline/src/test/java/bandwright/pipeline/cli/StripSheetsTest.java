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
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Strips on paper of the shop's own: glued from several sheets, from a printer that prints short, over other files. */
final class StripSheetsTest {
    /** Ten pixels a millimetre. */
    private static final int DPI = 254;

    /** A card of 4 x 6 in has room for 88.9 mm across; 10 mm of it are shown again on the next. */
    private static final int STEP = 789;

    private static final int MARGIN = 64;
    private static final int LAP = 100;

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private String rules = "";

    @BeforeEach
    void ownPaper() throws IOException {
        rules = rules("desk,letter|card,file,,\n");
    }

    private String rules(String printer) throws IOException {
        Path tables = Files.createDirectories(folder.resolve("rules"));
        Files.writeString(tables.resolve("papers.csv"), """
                id,name,width,height,margin_top,margin_right,margin_bottom,margin_left
                letter,Letter,8.5 in,11 in,1/4 in,1/4 in,1/4 in,1/4 in
                card,Card,4 in,6 in,1/4 in,1/4 in,1/4 in,1/4 in
                tape,Tape,4 in,,1/4 in,1/4 in,1/4 in,1/4 in
                """);
        Files.writeString(tables.resolve("printers.csv"), "id,papers,mirror,scale_x,scale_y\n" + printer);
        return tables.toString();
    }

    private int bandwright(String... words) {
        return Main.run(new PrintWriter(out), new PrintWriter(err), false, words);
    }

    private Path pdf(String... words) {
        Path file = folder.resolve(words[0] + ".pdf");
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--rules", rules, "--out", file.toString()));
        assertThat(bandwright(all.toArray(String[]::new))).as(err.toString()).isZero();
        return file;
    }

    /** 257.61 round less a handle of 22: 235.61 mm must touch the handle at both ends; the band keeps 12.7 mm off it. */
    @Test
    void theDashedEndsReachTheHandle() throws IOException {
        int[] bounds = ink(drawn(pdf("strip", "MUG-11-W"), 0));
        assertThat(bounds[1] - bounds[0]).isBetween(2355, 2359);
    }

    @Test
    void neighboursShowTheSameWhereTheyLap() throws IOException {
        Path file = pdf("strip", "MUG-11-W", "--paper", "card");
        assertThat(out.toString()).contains("glue its first 3 sheets together, cross on cross");
        BufferedImage first = drawn(file, 0);
        BufferedImage second = drawn(file, 1);
        assertThat(differing(first, second, 0)).isLessThan(300);
        // A sheet that lies a tenth of a millimetre off is seen.
        assertThat(differing(first, second, -1)).isGreaterThan(1000);
        assertThat(differing(first, second, 1)).isGreaterThan(1000);
        // All sheets together are as long as the strip.
        assertThat(ink(drawn(file, 2))[1] + 2 * STEP - ink(first)[0]).isBetween(2355, 2359);
    }

    @ParameterizedTest
    @CsvSource({"file", "driver"})
    void onAPrinterThatPrintsShortTheStripIsTrue(String mirror) throws IOException {
        rules = rules("desk,letter|card," + mirror + ",0.98,0.99\n");
        Path file = pdf("strip", "MUG-11-W");
        int[] bounds = ink(drawn(file, 0));
        // The strip lies along the paper: 235.61 / 0.99 in the file, which comes out as 235.61.
        assertThat((bounds[1] - bounds[0]) * 0.99).isBetween(2354.5, 2359.5);
        assertThat(words(file)).contains("This bar must measure 100 mm", "Rim edge: this way up");
    }

    @Test
    void theLastPageSaysWhichCellToMend() throws IOException {
        String mug = words(pdf("strip", "MUG-11-W"));
        assertThat(mug).contains("It must read 257.61 mm (10.142 in)");
        assertThat(mug).contains("the thickness of plain paper (0.1 mm) is taken off");
        assertThat(mug).contains("write what it reads, with its unit, into circumference of MUG-11-W in blanks.csv");
        assertThat(mug).contains("They run onto it: handle_width of MUG-11-W in blanks.csv is too small");
        assertThat(words(pdf("strip", "TUM-20-W")))
                .contains("The two ends must meet")
                .doesNotContain("handle_width");
        assertThat(words(pdf("strip", "COAST-R")))
                .contains("Top edge: this way up")
                .doesNotContain("circumference");
    }

    @Test
    void noPageIsWrittenOverAnotherKindOfPage() throws IOException {
        Path ruler = pdf("ruler");
        byte[] before = Files.readAllBytes(ruler);
        assertThat(bandwright("strip", "MUG-11-W", "--out", ruler.toString())).isEqualTo(2);
        assertThat(err.toString()).hasLineCount(1).contains("left alone");
        assertThat(Files.readAllBytes(ruler)).isEqualTo(before);
        assertThat(bandwright("ruler", "--out", folder.toString())).isEqualTo(2);
    }

    @Test
    void theSheetsOfARunAreLeftAlone() throws IOException {
        Path sheets = folder.resolve("sheets.pdf");
        Files.copy(Path.of("..", "outbox-sample", "2026-03-02-1", "sheets", "letter-01.pdf"), sheets);
        byte[] before = Files.readAllBytes(sheets);
        assertThat(bandwright("strip", "MUG-11-W", "--out", sheets.toString())).isEqualTo(2);
        assertThat(Files.readAllBytes(sheets)).isEqualTo(before);
    }

    @ParameterizedTest
    @CsvSource({"strip MUG-11-W, crad, Did you mean card?", "ruler, crad, Did you mean card?", "ruler, tape, is a roll"
    })
    void aPaperThatIsNoneIsAskedBack(String command, String paper, String why) {
        List<String> all = new ArrayList<>(List.of(command.split(" ")));
        all.addAll(List.of("--rules", rules, "--paper", paper));
        assertThat(bandwright(all.toArray(String[]::new))).isEqualTo(2);
        assertThat(err.toString()).hasLineCount(1).contains(why);
    }

    @Test
    void onSmallPaperTheBarsAreShorterAndTheCommandNamesThePaper() throws IOException {
        String text = words(pdf("ruler", "--paper", "card"));
        assertThat(text).contains("50 mm across and 100 mm along", "--printer desk --paper card");
        assertThat(bandwright("ruler", "--rules", rules, "--paper", "card", "--measured", "49.8x99.1"))
                .isZero();
        assertThat(out.toString()).contains("scale_x 0.9960, scale_y 0.9910");
    }

    @Test
    void inchesAreAskedBackInMillimetres() {
        assertThat(bandwright("ruler", "--measured", "7.84x7.82")).isEqualTo(2);
        assertThat(err.toString()).hasLineCount(1).contains("looks like inches", "--measured 199.1x198.6");
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

    /** Pixels of the lap, above the line that numbers the sheets, that are dark on one sheet only. */
    private static int differing(BufferedImage first, BufferedImage second, int off) {
        int differing = 0;
        for (int y = 0; y < first.getHeight() - 150; y++) {
            for (int x = 15; x < LAP - 15; x++) {
                if (isDark(first, MARGIN + STEP + x, y) != isDark(second, MARGIN + x + off, y)) {
                    differing++;
                }
            }
        }
        return differing;
    }

    /** The first and the last column with ink. */
    private static int[] ink(BufferedImage page) {
        int[] bounds = {page.getWidth(), 0};
        for (int y = 0; y < page.getHeight(); y++) {
            for (int x = 0; x < page.getWidth(); x++) {
                if (isDark(page, x, y)) {
                    bounds[0] = Math.min(bounds[0], x);
                    bounds[1] = Math.max(bounds[1], x + 1);
                }
            }
        }
        return bounds;
    }
}
