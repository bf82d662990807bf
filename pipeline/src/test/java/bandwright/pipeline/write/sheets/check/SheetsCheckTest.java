package bandwright.pipeline.write.sheets.check;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.size.Layer;
import bandwright.pipeline.size.Transfer;
import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.tile.Rotation;
import bandwright.pipeline.tile.Sheet;
import bandwright.pipeline.write.SheetFile;
import bandwright.pipeline.write.sheets.DrawnArtwork;
import bandwright.pipeline.write.sheets.SheetShop;
import bandwright.pipeline.write.sheets.WrittenSheets;
import bandwright.rules.paper.MirrorBy;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** A check that cannot fail proves nothing: each of these files is wrong in one way, and the check must say so. */
class SheetsCheckTest {
    private static final double WIDE = 180;
    private static final double HIGH = 80;

    @TempDir
    Path folder;

    private PaperRoom room = SheetShop.letter();
    private final BufferedImage lighthouse = DrawnArtwork.lighthouse(900, 400, 3);
    private Transfer mug = new Transfer(Length.ZERO, Length.ZERO, List.of());

    @BeforeEach
    void drawTheMug() {
        mug = transfer(lighthouse, "lighthouse.png");
    }

    @ParameterizedTest
    @CsvSource({"FILE,1,1", "DRIVER,1,1", "FILE,0.985,1.01", "DRIVER,0.985,1.01"})
    void aFileAsMeantHasNoDifferences(MirrorBy mirror, double scaleX, double scaleY) {
        room = SheetShop.letter(SheetShop.printer(mirror, scaleX, scaleY));
        SheetFile meant = file(page(mug, 10, Rotation.R0), page(mug, 20, Rotation.R90));
        assertThat(SheetsCheck.differences(written(meant), meant)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Rotation.class)
    void anUnmirroredPictureIsSeenByItsTurn(Rotation rotation) {
        SheetFile meant = file(page(mug, 17.95, rotation));
        PaperRoom driver = SheetShop.letter(SheetShop.printer(MirrorBy.DRIVER, 1, 1));
        SheetFile unmirrored = file(new Sheet(driver, meant.sheets().get(0).placed()));
        assertThat(SheetsCheck.differences(written(unmirrored), meant))
                .anyMatch(line -> line.contains("turned or mirrored otherwise"));
    }

    @Test
    void anUnmirroredPictureIsSeenInTheDrawing() {
        BufferedImage flipped = new BufferedImage(900, 400, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = flipped.createGraphics();
        g.drawImage(lighthouse, 900, 0, -900, 400, null);
        g.dispose();
        assertDrawnOtherwise(transfer(flipped, "flipped.png"));
    }

    @Test
    void aPictureOf97PercentIsSeenInTheDrawing() {
        Layer.Picture picture = (Layer.Picture) mug.layers().get(0);
        Box smaller = new Box(
                Length.mm(WIDE * 0.015),
                Length.mm(HIGH * 0.015),
                mug.width().times(0.97),
                mug.height().times(0.97));
        assertDrawnOtherwise(new Transfer(
                mug.width(), mug.height(), List.of(new Layer.Picture(picture.artwork(), smaller, smaller))));
    }

    @Test
    void aTransferOf97PercentIsSeenByItsBox() {
        Transfer smaller =
                SheetShop.covering(((Layer.Picture) mug.layers().get(0)).artwork(), WIDE * 0.97, HIGH * 0.97);
        assertThat(SheetsCheck.differences(
                        written(file(page(smaller, 10, Rotation.R0))), file(page(mug, 10, Rotation.R0))))
                .anyMatch(line -> line.contains("no picture of unit"))
                .anyMatch(line -> line.contains("nobody asked for"));
    }

    @Test
    void anotherPictureIsSeenInTheDrawing() {
        assertDrawnOtherwise(transfer(DrawnArtwork.lighthouse(900, 400, 44), "other.png"));
    }

    @Test
    void aSwapOnAPageThatIsNotDrawnIsSeen() {
        Transfer other = transfer(DrawnArtwork.lighthouse(900, 400, 44), "other.png");
        Sheet both = sheet(placed(mug, 1, 10, 10), placed(other, 2, 10, 120));
        Sheet swapped = sheet(placed(other, 3, 10, 10));
        Sheet right = sheet(placed(mug, 3, 10, 10));
        assertThat(SheetsCheck.differences(written(file(both, swapped)), file(both, right)))
                .singleElement()
                .asString()
                .contains("page 2")
                .contains("has the picture of another");
    }

    @ParameterizedTest
    @CsvSource({"0.02,1", "0.009,0"})
    void aShiftedBoxIsSeenBeyondAHundredthOfAMillimetre(double shift, int seen) {
        SheetFile meant = file(sheet(placed(mug, 1, 10, 10)));
        SheetFile shifted = file(sheet(placed(mug, 1, 10 + shift, 10)));
        assertThat(SheetsCheck.differences(written(shifted), meant)).hasSize(2 * seen);
    }

    @Test
    void aMissingPageIsSeen() {
        Sheet page = page(mug, 10, Rotation.R0);
        assertThat(SheetsCheck.differences(written(file(page)), file(page, page)))
                .containsExactly("letter-01.pdf has 1 pages, 2 were meant");
    }

    @Test
    void anotherPaperIsSeen() {
        PaperRoom a4 = PaperRoom.of(SheetShop.paper("a4", "A4", 210, 297), room.printer());
        Sheet page = page(mug, 10, Rotation.R0);
        assertThat(SheetsCheck.differences(written(file(new Sheet(a4, page.placed()))), file(page)))
                .containsExactly("letter-01.pdf, page 1, is 210.00 × 297.00 mm, 215.90 × 279.40 mm was meant");
    }

    @Test
    void aFileCutShortIsSaidPlainly() throws Exception {
        SheetFile meant = file(page(mug, 10, Rotation.R0));
        Path pdf = written(meant);
        Files.write(pdf, new byte[] {'%', 'P', 'D', 'F'});
        assertThat(SheetsCheck.differences(pdf, meant))
                .singleElement()
                .asString()
                .contains("cannot be opened again");
    }

    @Test
    void aPictureThatIsToneShiftedByAProfileIsStillItself() {
        BufferedImage darker = new BufferedImage(900, 400, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < 400; y++) {
            for (int x = 0; x < 900; x++) {
                int pixel = lighthouse.getRGB(x, y);
                darker.setRGB(x, y, gamma(pixel >> 16) << 16 | gamma(pixel >> 8) << 8 | gamma(pixel));
            }
        }
        SheetFile toned = file(sheet(placed(transfer(darker, "darker.png"), 1, 10, 10)));
        assertThat(SheetsCheck.differences(written(toned), file(sheet(placed(mug, 1, 10, 10)))))
                .isEmpty();
    }

    private static int gamma(int channel) {
        return (int) Math.round(255 * Math.pow((channel & 255) / 255.0, 1.8));
    }

    private void assertDrawnOtherwise(Transfer wrong) {
        SheetFile meant = file(sheet(placed(mug, 1, 10, 10)));
        assertThat(SheetsCheck.differences(written(file(sheet(placed(wrong, 1, 10, 10)))), meant))
                .containsExactly("letter-01.pdf, page 1: the picture of unit Q1-1-1 does not look like its artwork");
    }

    private Transfer transfer(BufferedImage image, String name) {
        ArtworkFile artwork = DrawnArtwork.png(folder, name, image);
        return SheetShop.covering(artwork, WIDE, HIGH);
    }

    private Placed placed(Transfer transfer, int piece, double xMm, double yMm) {
        return SheetShop.placed(SheetShop.unit("Q1", piece, transfer, room), 1, xMm, yMm, Rotation.R0);
    }

    private Sheet page(Transfer transfer, double xMm, Rotation rotation) {
        double x = rotation.swapsSides() ? (215.9 - HIGH) / 2 : xMm;
        return sheet(SheetShop.placed(SheetShop.unit("Q1", 1, transfer, room), 1, x, 30, rotation));
    }

    private Sheet sheet(Placed... placed) {
        return new Sheet(room, List.of(placed));
    }

    private static SheetFile file(Sheet... sheets) {
        return new SheetFile("sheets/letter-01.pdf", List.of(sheets));
    }

    private Path written(SheetFile file) {
        return WrittenSheets.write(file, folder.resolve("letter-01.pdf"));
    }
}
