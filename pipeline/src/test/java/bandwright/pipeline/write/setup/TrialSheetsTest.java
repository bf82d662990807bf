package bandwright.pipeline.write.setup;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.RunId;
import bandwright.pipeline.write.list.Faces;
import bandwright.pipeline.write.pdf.PdfFile;
import bandwright.rules.Rulebook;
import bandwright.rules.RulebookFaults;
import bandwright.rules.blanks.BandLaw;
import bandwright.rules.blanks.Blank;
import bandwright.rules.paper.MirrorBy;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.paper.Printer;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The transfers of a trial as they come out of a printer: true to size, mirrored once, with nothing beside the swatches. */
final class TrialSheetsTest {
    /** Ten pixels a millimetre. */
    private static final int DPI = 254;

    private static final int CYAN = 0x009EE0;
    private static final int MAGENTA = 0xE2007A;
    private static final int BLUE = 0x312783;

    private static final double GAP = 4;

    private final Rulebook rules;

    TrialSheetsTest() throws RulebookFaults {
        rules = Rulebook.read(Optional.empty());
    }

    private SwatchStrip strip(String sku, String source) {
        Blank blank = rules.blanks().find(sku).orElseThrow();
        return SwatchStrip.of(
                        blank,
                        BandLaw.of(blank, rules.heatSources().find(source).orElseThrow())
                                .orElseThrow())
                .orElseThrow();
    }

    private PaperRoom room(MirrorBy mirror, double scaleX, double scaleY) {
        Printer own = rules.printers().find("desk").orElseThrow();
        return PaperRoom.of(
                rules.papers().find("letter").orElseThrow(),
                new Printer(
                        own.id(),
                        own.papers(),
                        own.queue(),
                        mirror,
                        own.profile(),
                        own.inkCost(),
                        scaleX,
                        scaleY,
                        own.note()));
    }

    /** The first sheet of three tries. */
    private BufferedImage drawn(SwatchStrip strip, PaperRoom room) throws IOException {
        List<TrialSheets.Transfer> transfers = new ArrayList<>();
        for (String number : List.of("1", "2", "3")) {
            transfers.add(new TrialSheets.Transfer(
                    new Swatches.Name(number, List.of("374 \u00b0F (190 \u00b0C), 3 min", "MUG-11-W")),
                    List.of("Try " + number)));
        }
        try (PDDocument document = PdfFile.create(new RunId(LocalDate.EPOCH, 1), "trial", "trial")) {
            Faces faces = new Faces(document);
            new TrialSheets(strip, room, rules.shop())
                    .pages(transfers, "Trial", document, faces)
                    .forEach(document::addPage);
            faces.finish();
            return new PDFRenderer(document).renderImageWithDPI(0, DPI);
        }
    }

    @ParameterizedTest
    @CsvSource({"MUG-11-W, clamp", "TUM-20-W, tumbler", "COAST-R, flat", "STEIN-16-F, oven"})
    void everySwatchHasItsTrueSize(String sku, String source) throws IOException {
        BufferedImage page = drawn(strip(sku, source), room(MirrorBy.FILE, 1, 1));
        // 8 mm along the band, 13 mm up it; the strips lie along the paper's length.
        for (int colour : new int[] {CYAN, MAGENTA, BLUE}) {
            assertThat(longest(page, colour, true)).isBetween(129, 131);
            assertThat(longest(page, colour, false)).isBetween(79, 81);
        }
    }

    @ParameterizedTest
    @CsvSource({"FILE", "DRIVER"})
    void aPrinterThatPrintsShortGetsThemLarger(MirrorBy mirror) throws IOException {
        BufferedImage page = drawn(strip("MUG-11-W", "clamp"), room(mirror, 0.97, 0.95));
        assertThat(longest(page, MAGENTA, true) * 0.97).isBetween(129.0, 131.0);
        assertThat(longest(page, MAGENTA, false) * 0.95).isBetween(79.0, 81.0);
    }

    /** The band of 210.21 mm has three blocks, from end to end. */
    @Test
    void theSwatchesReachBothEndsOfTheBand() throws IOException {
        SwatchStrip strip = strip("MUG-11-W", "clamp");
        assertThat(strip.width()).isBetween(210.20, 210.22);
        assertThat(strip.copies()).isEqualTo(3);
        BufferedImage page = drawn(strip, room(MirrorBy.FILE, 1, 1));
        // From the first block's cyan to the last one's: twice 73.1 mm from block to block, and the patch itself.
        int[] rows = rows(page, CYAN);
        assertThat(rows[1] - rows[0]).isBetween(1540, 1545);
    }

    /** Read as the label beside it is read, the file's picture runs from right to left: blue before black and cyan. */
    @Test
    void theFileIsMirroredAndTheDriversIsThePageFlipped() throws IOException {
        SwatchStrip strip = strip("MUG-11-W", "clamp");
        BufferedImage file = drawn(strip, room(MirrorBy.FILE, 1, 1));
        BufferedImage driver = drawn(strip, room(MirrorBy.DRIVER, 1, 1));
        // Words run up the page, so that what comes first stands lower.
        assertThat(rows(file, BLUE)[1]).isGreaterThan(rows(file, CYAN)[1]);
        int differing = 0;
        int last = file.getWidth() - 1;
        for (int y = 0; y < file.getHeight(); y++) {
            // Without the head, whose words say how to set the driver.
            for (int x = 200; x < file.getWidth(); x++) {
                differing += isInk(file.getRGB(x, y)) == isInk(driver.getRGB(last - x, y)) ? 0 : 1;
            }
        }
        assertThat(differing).isLessThan(4000);
    }

    @ParameterizedTest
    @CsvSource({"MUG-11-W, clamp", "TUM-20-W, tumbler", "COAST-R, flat"})
    void nothingStandsWithinTheGapOfASwatch(String sku, String source) throws IOException {
        SwatchStrip strip = strip(sku, source);
        PaperRoom room = room(MirrorBy.FILE, 1, 1);
        BufferedImage page = drawn(strip, room);
        TrialGrid grid = TrialGrid.of(strip.box(), GAP, room.inside());
        assertThat(grid.isTurned()).isTrue();
        for (int place = 0; place < 3; place++) {
            double right = room.inside().right().mm() - grid.lower(place, GAP);
            double low = room.inside().y().mm() + grid.left(place);
            int inside = 0;
            int beside = 0;
            for (double x = right - strip.height() - GAP + 0.2; x < right + GAP - 0.2; x += 0.1) {
                for (double y = low - GAP + 0.2; y < low + strip.width() + GAP - 0.2; y += 0.1) {
                    boolean isOn = x > right - strip.height() - 0.1
                            && x < right + 0.1
                            && y > low - 0.1
                            && y < low + strip.width() + 0.1;
                    int rgb = page.getRGB((int) (x * 10), page.getHeight() - 1 - (int) (y * 10));
                    inside += isOn && isInk(rgb) ? 1 : 0;
                    beside += !isOn && isInk(rgb) ? 1 : 0;
                }
            }
            assertThat(beside).as("try " + (place + 1)).isZero();
            assertThat(inside).isGreaterThan(100_000);
        }
    }

    @Test
    void noSwatchLeavesItsBandAndSmallBandsGetSmallOnes() {
        for (Blank blank : rules.blanks().list()) {
            rules.heatSources().list().forEach(source -> BandLaw.of(blank, source)
                    .ifPresent(band -> SwatchStrip.of(blank, band).ifPresent(strip -> {
                        assertThat(strip.width())
                                .isLessThanOrEqualTo(band.around().mm() + 1e-6);
                        assertThat(strip.height()).isLessThanOrEqualTo(band.up().mm());
                        assertThat(strip.scale()).isBetween(0.5, 1.0);
                        assertThat(strip.left(strip.copies() - 1) + Swatches.WIDTH * strip.scale())
                                .isBetween(strip.width() - 1e-6, strip.width() + 1e-6);
                    })));
        }
        // The corners of its block lie in the circle that is 3 mm inside the edge of the coaster of 95 mm.
        SwatchStrip round = strip("COAST-R", "flat");
        assertThat(Math.hypot(round.width(), round.height())).isLessThanOrEqualTo(89);
    }

    /** On a cone the block is bent: half-way up it keeps its length. */
    @Test
    void onAConeTheStripIsTheMiddleOfTheBandsSector() {
        SwatchStrip strip = strip("CONE-12-W", "oven");
        Blank cone = rules.blanks().find("CONE-12-W").orElseThrow();
        double middle = BandLaw.of(cone, rules.heatSources().find("oven").orElseThrow())
                .orElseThrow()
                .sector()
                .orElseThrow()
                .middle()
                .mm();
        assertThat(strip.sector()).hasValueSatisfying(sector -> {
            assertThat(sector.middle().mm()).isEqualTo(middle);
            assertThat((sector.inner().mm() + sector.outer().mm()) / 2).isBetween(middle - 1e-3, middle + 1e-3);
            assertThat(2 * sector.halfRadians() * middle).isBetween(strip.width() - 1e-3, strip.width() + 1e-3);
        });
    }

    private static boolean isInk(int rgb) {
        return (rgb & 255) < 250 || (rgb >> 8 & 255) < 250 || (rgb >> 16 & 255) < 250;
    }

    private static boolean is(int rgb, int colour) {
        Color one = new Color(rgb);
        Color other = new Color(colour);
        return Math.abs(one.getRed() - other.getRed())
                        + Math.abs(one.getGreen() - other.getGreen())
                        + Math.abs(one.getBlue() - other.getBlue())
                < 40;
    }

    private static int longest(BufferedImage page, int colour, boolean isAcross) {
        int longest = 0;
        int lines = isAcross ? page.getHeight() : page.getWidth();
        int along = isAcross ? page.getWidth() : page.getHeight();
        for (int line = 0; line < lines; line++) {
            int run = 0;
            for (int at = 0; at < along; at++) {
                run = is(isAcross ? page.getRGB(at, line) : page.getRGB(line, at), colour) ? run + 1 : 0;
                longest = Math.max(longest, run);
            }
        }
        return longest;
    }

    /** The first and the last row with that colour. */
    private static int[] rows(BufferedImage page, int colour) {
        int[] rows = {page.getHeight(), 0};
        for (int y = 0; y < page.getHeight(); y++) {
            for (int x = 0; x < page.getWidth(); x++) {
                if (is(page.getRGB(x, y), colour)) {
                    rows[0] = Math.min(rows[0], y);
                    rows[1] = Math.max(rows[1], y + 1);
                }
            }
        }
        return rows;
    }
}
