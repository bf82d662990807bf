package bandwright.pipeline.write.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.Orientation;
import bandwright.pipeline.size.Transfer;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.tile.Rotation;
import bandwright.pipeline.tile.Sheet;
import bandwright.pipeline.write.SheetFile;
import bandwright.rules.paper.MirrorBy;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No ink comes under heat but the picture: what the labels and marks leave on the paper, looked at pixel by pixel. */
class InkTest {
    private static final int DPI = 200;

    /** Half a pixel at 200 an inch, and a hair. */
    private static final double BLUR = 0.08;

    @TempDir
    Path folder;

    private final PaperRoom room = SheetShop.letter();
    private Transfer small = new Transfer(Length.ZERO, Length.ZERO, List.of());

    @BeforeEach
    void draw() {
        small = transfer(60, 40);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void labelsAndMarksKeepOutOfCutLinesGapsAndMargins(long seed) {
        Sheet sheet = new Sheet(room, scattered(seed));
        List<double[]> ink = ink(written(sheet));
        assertThat(ink).as("seed %d", seed).isNotEmpty();
        for (double[] run : ink) {
            for (Placed placed : sheet.placed()) {
                assertThat(SheetReader.reach(run, placed.box().grown(Length.mm(4))))
                        .as("seed %d: ink at %.1f, %.1f mm and %s", seed, run[0], run[1], placed.box())
                        .isLessThan(BLUR);
            }
            assertThat(run[0]).as("left margin").isGreaterThan(room.inside().x().mm() - BLUR);
            assertThat(run[1])
                    .as("lower margin")
                    .isGreaterThan(room.inside().y().mm() - BLUR);
            assertThat(run[2])
                    .as("right margin")
                    .isLessThan(room.inside().right().mm() + BLUR);
            assertThat(run[3]).as("upper margin").isLessThan(room.inside().top().mm() + BLUR);
        }
    }

    @Test
    void onAFullPageTheMarksAreLeftOut() {
        // One picture that fills the page but for its gap: nothing else has room.
        Box inside = room.inside().grown(Length.mm(-4));
        Transfer whole = transfer(inside.width().mm(), inside.height().mm());
        Placed placed = new Placed(SheetShop.unit("Q1", 1, whole, room), 1, inside, Rotation.R0, Optional.empty());
        assertThat(ink(written(new Sheet(room, List.of(placed))))).isEmpty();
    }

    @Test
    void aBarIsAHundredMillimetresLong() {
        Placed placed = SheetShop.placed(SheetShop.unit("Q1", 1, small, room), 1, 20, 20, Rotation.R0);
        double longest = ink(written(new Sheet(room, List.of(placed)))).stream()
                .mapToDouble(run -> run[2] - run[0])
                .max()
                .orElse(0);
        assertThat(longest).isBetween(100 - 0.15, 100 + 0.15);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Q1042-1-1", "0071-1-12", "STOCK-2026-03-02_harbour-1-3"})
    void thePhoneReadsTheUnitOffEveryFlag(String id) throws Exception {
        for (Rotation rotation : Rotation.values()) {
            Unit unit = SheetShop.unit(id, "Q1042", 1, "MUG-11-W", "harbour terns", small, room);
            Placed placed = SheetShop.placed(unit, 12, 30, 30, rotation);
            assertThat(code(written(new Sheet(room, List.of(placed))), placed)).isEqualTo(id);
        }
    }

    @Test
    void theDriversPaperShowsTheCodeUnmirrored() throws Exception {
        PaperRoom driver = SheetShop.letter(SheetShop.printer(MirrorBy.DRIVER, 1, 1));
        Placed placed = SheetShop.placed(SheetShop.unit("Q7", 1, small, driver), 12, 30, 30, Rotation.R0);
        BufferedImage file = SheetReader.drawn(written(new Sheet(driver, List.of(placed))), 0, 400);
        BufferedImage paper = TaggedPictures.stored(file, Orientation.TOP_RIGHT);
        assertThat(code(paper, placed)).isEqualTo("Q7-1-1");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Q1",
                "an order number that somebody made far too long for any label to hold it 4711",
                "\u706f\u53f0 \uD83D\uDD6F \u0644\u0648",
                "tab\tand\nline",
                ""
            })
    void noTextLeavesItsFlag(String text) {
        Unit unit = SheetShop.unit("Q1042-1-1", text, 1, text, text, small, room);
        for (Rotation rotation : List.of(Rotation.R0, Rotation.R90)) {
            Placed placed = SheetShop.placed(unit, 123456, 30, 30, rotation);
            Box ink = placed.flag().orElseThrow().grown(Length.mm(-2));
            // The second page has no settings or bars: its flag and the line that names the sheet far from it.
            Path pdf = WrittenSheets.write(
                    new SheetFile(
                            "sheets/letter-01.pdf",
                            List.of(new Sheet(room, List.of()), new Sheet(room, List.of(placed)))),
                    folder.resolve("letter-01.pdf"));
            BufferedImage page = SheetReader.drawnWithoutPictures(pdf, 1, DPI);
            List<double[]> near = SheetReader.ink(page, 279.4, DPI).stream()
                    .filter(run -> SheetReader.reach(run, placed.flag().orElseThrow()) > BLUR)
                    .toList();
            assertThat(near).isNotEmpty().allSatisfy(run -> {
                assertThat(run[0]).isGreaterThan(ink.x().mm() - BLUR);
                assertThat(run[1]).isGreaterThan(ink.y().mm() - BLUR);
                assertThat(run[2]).isLessThan(ink.right().mm() + BLUR);
                assertThat(run[3]).isLessThan(ink.top().mm() + BLUR);
            });
        }
    }

    /** Pieces at random, no two pictures nearer than the gap and no flag on another piece. */
    private List<Placed> scattered(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Placed> placed = new ArrayList<>();
        List<Box> taken = new ArrayList<>();
        for (int i = 1; i <= 400 && placed.size() < 14; i++) {
            Rotation rotation = List.of(Rotation.values()).get(random.nextInt(4));
            Placed next = SheetShop.placed(
                    SheetShop.unit("Q" + i, 1, small, room),
                    i,
                    7 + random.nextInt(150),
                    7 + random.nextInt(220),
                    rotation);
            Box flag = next.flag().orElseThrow();
            Box claim = next.box().grown(Length.mm(4));
            boolean fits = room.inside().contains(next.box().grown(Length.mm(2)))
                    && room.inside().contains(flag)
                    && taken.stream().noneMatch(box -> box.overlaps(claim) || box.overlaps(flag));
            if (fits) {
                placed.add(next);
                taken.add(claim);
                taken.add(flag);
            }
        }
        return placed;
    }

    private static String code(Path pdf, Placed placed) throws Exception {
        return code(SheetReader.drawn(pdf, 0, 400), placed);
    }

    private static String code(BufferedImage page, Placed placed) throws Exception {
        Box flag = placed.flag().orElseThrow();
        double dots = 400 / 25.4;
        int x = (int) (flag.x().mm() * dots);
        int y = (int) (page.getHeight() - flag.top().mm() * dots);
        int width = (int) (flag.width().mm() * dots);
        int height = (int) (flag.height().mm() * dots);
        int[] pixels = page.getRGB(x, y, width, height, null, 0, width);
        var source = new RGBLuminanceSource(width, height, pixels);
        return new QRCodeReader()
                .decode(
                        new BinaryBitmap(new HybridBinarizer(source)),
                        Map.of(
                                DecodeHintType.TRY_HARDER,
                                true,
                                DecodeHintType.POSSIBLE_FORMATS,
                                List.of(BarcodeFormat.QR_CODE)))
                .getText();
    }

    private List<double[]> ink(Path pdf) {
        return SheetReader.ink(SheetReader.drawnWithoutPictures(pdf, 0, DPI), 279.4, DPI);
    }

    private Transfer transfer(double widthMm, double heightMm) {
        ArtworkFile artwork = DrawnArtwork.png(folder, "l.png", DrawnArtwork.lighthouse(300, 200, 9));
        return SheetShop.covering(artwork, widthMm, heightMm);
    }

    private Path written(Sheet sheet) {
        return WrittenSheets.write(
                new SheetFile("sheets/letter-01.pdf", List.of(sheet)), folder.resolve("letter-01.pdf"));
    }
}
