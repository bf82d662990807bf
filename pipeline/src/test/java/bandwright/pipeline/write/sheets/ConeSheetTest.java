package bandwright.pipeline.write.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.Orientation;
import bandwright.pipeline.size.Layer;
import bandwright.pipeline.size.Transfer;
import bandwright.pipeline.tile.LaidSector;
import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.tile.Rotation;
import bandwright.pipeline.tile.Sheet;
import bandwright.pipeline.write.SheetFile;
import bandwright.pipeline.write.sheets.check.SheetsCheck;
import bandwright.rules.blanks.Sector;
import bandwright.rules.paper.FlagLaw;
import bandwright.rules.paper.Footprint;
import bandwright.rules.paper.MirrorBy;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A cone's page, drawn and unrolled by what run.json says of its sector, beside the plain picture. */
class ConeSheetTest {
    private static final int DPI = 100;
    private static final double WIDTH = 150;
    private static final double HEIGHT = 70;

    @TempDir
    Path folder;

    /** Of a cone that is 184.00 x 90.83 mm half-way up, made smaller; its rim is the outer arc, or its foot. */
    private static Sector sector(boolean rimIsOuter) {
        double inner = 200;
        double middle = inner + HEIGHT / 2;
        return new Sector(
                Length.mm(inner), Length.mm(inner + HEIGHT), Length.mm(middle), WIDTH / middle / 2, rimIsOuter);
    }

    @ParameterizedTest
    @CsvSource({
        "R0, true, FILE, 1, 1", "R90, true, FILE, 1, 1", "R180, true, FILE, 1, 1", "R270, true, FILE, 1, 1",
        "R0, false, FILE, 1, 1", "R90, false, FILE, 1, 1", "R180, false, FILE, 1, 1", "R270, false, FILE, 1, 1",
        "R90, true, DRIVER, 1, 1", "R0, false, DRIVER, 0.98, 1.015",
    })
    void theUnrolledPageIsTheArtwork(
            Rotation rotation, boolean rimIsOuter, MirrorBy mirror, double scaleX, double scaleY) {
        PaperRoom room = SheetShop.letter(SheetShop.printer(mirror, scaleX, scaleY));
        BufferedImage artwork = DrawnArtwork.patches(900, 420, 7);
        Placed placed = placed(DrawnArtwork.png(folder, "l.png", artwork), sector(rimIsOuter), room, rotation);
        Path pdf = written(new Sheet(room, List.of(placed)));
        Unrolled printed = new Unrolled(
                SheetReader.drawn(pdf, 0, DPI), room, placed.sector().orElseThrow());

        assertThat(farOff(printed, artwork)).isLessThan(0.012);
        assertThat(farOff(printed, TaggedPictures.stored(artwork, Orientation.TOP_RIGHT)))
                .as("and it can tell a mirrored sector")
                .isGreaterThan(0.2);
        if (SheetReader.hasPoppler()) {
            Unrolled byPoppler = new Unrolled(
                    SheetReader.drawnByPoppler(pdf, 0, DPI),
                    room,
                    placed.sector().orElseThrow());
            assertThat(farOff(byPoppler, artwork)).isLessThan(0.012);
        }
        SheetFile meant = new SheetFile("sheets/letter-01.pdf", List.of(new Sheet(room, List.of(placed))));
        assertThat(SheetsCheck.differences(pdf, meant)).isEmpty();
    }

    @Test
    void itCanTellAStraightStrip() {
        PaperRoom room = SheetShop.letter();
        BufferedImage artwork = DrawnArtwork.patches(900, 420, 7);
        Transfer straight = SheetShop.covering(DrawnArtwork.png(folder, "l.png", artwork), WIDTH, HEIGHT);
        Placed strip = SheetShop.placed(SheetShop.unit("Q1", 1, straight, room), 1, 22, 31, Rotation.R0);
        Path pdf = written(new Sheet(room, List.of(strip)));
        Placed meant = placed(DrawnArtwork.png(folder, "m.png", artwork), sector(true), room, Rotation.R0);
        Unrolled printed = new Unrolled(
                SheetReader.drawn(pdf, 0, DPI), room, meant.sector().orElseThrow());
        assertThat(farOff(printed, artwork)).isGreaterThan(0.1);
    }

    /** A gap of 45 mm taken at the wider edge leaves a sector that is wider by the ratio of its radii. */
    @Test
    void itCanTellAGapThatIsTakenAtTheWrongEdge() {
        PaperRoom room = SheetShop.letter();
        BufferedImage artwork = DrawnArtwork.patches(900, 420, 7);
        Sector right = sector(true);
        double around = Math.PI * 90;
        double half = right.halfRadians() * (1 - 45 / around) / (1 - 45 / (around * 200 / 270));
        Sector wrong = new Sector(right.inner(), right.outer(), right.middle(), half, true);
        Placed drawn = placed(DrawnArtwork.png(folder, "l.png", artwork), wrong, room, Rotation.R90);
        Placed meant = placed(DrawnArtwork.png(folder, "m.png", artwork), right, room, Rotation.R90);
        Unrolled printed = new Unrolled(
                SheetReader.drawn(written(new Sheet(room, List.of(drawn))), 0, DPI),
                room,
                meant.sector().orElseThrow());
        assertThat(farOff(printed, artwork)).isGreaterThan(0.05);
    }

    @Test
    void theReadBackTellsAStraightStripFromABentOne() {
        PaperRoom room = SheetShop.letter();
        ArtworkFile artwork = DrawnArtwork.png(folder, "l.png", DrawnArtwork.patches(900, 420, 7));
        Placed bent = placed(artwork, sector(true), room, Rotation.R0);
        // The same picture, stretched straight over the sector's box.
        Box box = sector(true).box();
        Transfer straight = new Transfer(
                box.width(), box.height(), List.of(new Layer.Picture(artwork, box, box)), Optional.empty());
        Placed strip = SheetShop.placed(SheetShop.unit("Q1", 1, straight, room), 1, 22, 31, Rotation.R0);
        Path pdf = written(new Sheet(room, List.of(strip)));
        SheetFile meant = new SheetFile("sheets/letter-01.pdf", List.of(new Sheet(room, List.of(bent))));
        assertThat(SheetsCheck.differences(pdf, meant)).isNotEmpty();
    }

    /** A small cone whose own flag and ticks fill the hollows of its box: they are no part of its picture. */
    @ParameterizedTest
    @CsvSource({"R0, true", "R90, false", "R180, false", "R270, true"})
    void theReadBackMindsNoLabelInAConesHollow(Rotation rotation, boolean rimIsOuter) {
        PaperRoom room = SheetShop.letter();
        Sector small = new Sector(Length.mm(22), Length.mm(58), Length.mm(40), 1.5, rimIsOuter);
        Box flat = Box.of(Length.mm(120), Length.mm(36));
        ArtworkFile artwork = DrawnArtwork.png(folder, "l.png", DrawnArtwork.patches(900, 270, 7));
        Transfer transfer = new Transfer(
                flat.width(), flat.height(), List.of(new Layer.Picture(artwork, flat, flat)), Optional.of(small));
        Box box = rotation.turned(transfer.box(), transfer.box()).shifted(Length.mm(60), Length.mm(90));
        Box flag = Footprint.bent(small, FlagLaw.of(SheetShop.shop()))
                .turned(rotation.degrees() / 90)
                .flag()
                .orElseThrow()
                .shifted(box.x(), box.y());
        Placed placed = new Placed(SheetShop.unit("Q1", 1, transfer, room), 1, box, rotation, Optional.of(flag));
        Path pdf = written(new Sheet(room, List.of(placed)));
        SheetFile meant = new SheetFile("sheets/letter-01.pdf", List.of(new Sheet(room, List.of(placed))));
        assertThat(SheetsCheck.differences(pdf, meant)).isEmpty();
    }

    @Test
    void noInkIsOnThePaperOutsideTheSectorButMarksAndTheFlag() {
        PaperRoom room = SheetShop.letter();
        BufferedImage blue = new BufferedImage(300, 140, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < 300 * 140; i++) {
            blue.setRGB(i % 300, i / 300, 0x0000FF);
        }
        Placed placed = placed(DrawnArtwork.png(folder, "l.png", blue), sector(true), room, Rotation.R0);
        BufferedImage page = SheetReader.drawn(written(new Sheet(room, List.of(placed))), 0, DPI);
        LaidSector laid = placed.sector().orElseThrow();
        int inside = 0;
        for (int j = 0; j < page.getHeight(); j++) {
            for (int i = 0; i < page.getWidth(); i++) {
                double x = (i + 0.5) * 25.4 / DPI - laid.apexX().mm();
                double y = 279.4 - (j + 0.5) * 25.4 / DPI - laid.apexY().mm();
                double radius = Math.hypot(x, y);
                double degrees = Math.toDegrees(Math.atan2(y, x));
                double off = Math.max(
                        Math.max(200 - radius, radius - 270),
                        Math.abs(degrees - 90) * Math.PI / 180 * radius
                                - laid.sector().halfRadians() * radius);
                int colour = page.getRGB(i, j) & 0xFFFFFF;
                if (off < -0.3) {
                    inside++;
                    assertThat(colour).as("%d, %d, %f mm inside", i, j, -off).isEqualTo(0x0000FF);
                } else if (off > 0.3 && off < 3.5) {
                    // The gap of 4 mm, less what a pixel smears.
                    assertThat(colour).as("%d, %d, %f mm outside", i, j, off).isEqualTo(0xFFFFFF);
                }
            }
        }
        assertThat(inside).isGreaterThan(100_000);
    }

    /** A wall that hardly rises: its two ends come within a few millimetres of each other, and so would their ticks. */
    @Test
    void aSaucersTicksKeepTheGapFromItsOtherEndToo() {
        PaperRoom room = SheetShop.letter();
        double half = Math.PI - 0.02;
        Sector saucer = new Sector(Length.mm(14), Length.mm(80), Length.mm(47), half, true);
        BufferedImage white = new BufferedImage(90, 20, BufferedImage.TYPE_INT_RGB);
        IntStream.range(0, 90 * 20).forEach(i -> white.setRGB(i % 90, i / 90, 0xFFFFFF));
        Box flat = Box.of(Length.mm(2 * half * 47), Length.mm(66));
        ArtworkFile artwork = DrawnArtwork.png(folder, "w.png", white);
        Transfer blank = new Transfer(
                flat.width(), flat.height(), List.of(new Layer.Picture(artwork, flat, flat)), Optional.of(saucer));
        Placed placed = placed(blank, room, Rotation.R0);
        BufferedImage page = SheetReader.drawn(written(new Sheet(room, List.of(placed))), 0, DPI);
        LaidSector laid = placed.sector().orElseThrow();
        int marks = 0;
        for (int j = 0; j < page.getHeight(); j++) {
            for (int i = 0; i < page.getWidth(); i++) {
                double x = (i + 0.5) * 25.4 / DPI - laid.apexX().mm();
                double y = 279.4 - (j + 0.5) * 25.4 / DPI - laid.apexY().mm();
                double radius = Math.hypot(x, y);
                boolean inTheGap = radius > 14 - 3.6 && radius < 80 + 3.6;
                boolean isInked = (page.getRGB(i, j) & 0xFFFFFF) != 0xFFFFFF;
                if (inTheGap && isInked) {
                    fail("ink at %f, %f mm from the apex", x, y);
                }
                marks += isInked ? 1 : 0;
            }
        }
        assertThat(marks).as("there are marks at all").isGreaterThan(50);
    }

    private Placed placed(ArtworkFile artwork, Sector sector, PaperRoom room, Rotation rotation) {
        Box flat = Box.of(Length.mm(WIDTH), Length.mm(HEIGHT));
        return placed(
                new Transfer(
                        flat.width(),
                        flat.height(),
                        List.of(new Layer.Picture(artwork, flat, flat)),
                        Optional.of(sector)),
                room,
                rotation);
    }

    private static Placed placed(Transfer transfer, PaperRoom room, Rotation rotation) {
        Box box = rotation.turned(transfer.box(), transfer.box()).shifted(Length.mm(32), Length.mm(41));
        return new Placed(SheetShop.unit("Q1", 1, transfer, room), 1, box, rotation, Optional.empty());
    }

    private Path written(Sheet sheet) {
        return WrittenSheets.write(
                new SheetFile("sheets/letter-01.pdf", List.of(sheet)), folder.resolve("letter-01.pdf"));
    }

    private static double farOff(Unrolled printed, BufferedImage artwork) {
        double sum = 0;
        for (int i = 0; i < 20; i++) {
            for (int j = 0; j < 10; j++) {
                double u = (i + 0.5) / 20;
                double v = (j + 0.5) / 10;
                int want = artwork.getRGB((int) (u * artwork.getWidth()), (int) ((1 - v) * artwork.getHeight()));
                int got = printed.at(u, v);
                sum += (Math.abs((want >> 16 & 255) - (got >> 16 & 255))
                                + Math.abs((want >> 8 & 255) - (got >> 8 & 255))
                                + Math.abs((want & 255) - (got & 255)))
                        / (3 * 255.0);
            }
        }
        return sum / 200;
    }

    /** The printed page, looked at through the sector as the outbox contract puts it. */
    private record Unrolled(BufferedImage file, PaperRoom room, LaidSector laid) {
        int at(double u, double v) {
            double degrees =
                    laid.startDegrees().doubleValue() + u * laid.sweepDegrees().doubleValue();
            double inner = laid.sector().inner().mm2().doubleValue();
            double outer = laid.sector().outer().mm2().doubleValue();
            double radius = laid.sector().rimIsOuter() ? inner + v * (outer - inner) : outer - v * (outer - inner);
            double x = laid.apexX().mm2().doubleValue() + radius * Math.cos(Math.toRadians(degrees));
            double y = laid.apexY().mm2().doubleValue() + radius * Math.sin(Math.toRadians(degrees));
            double paper = room.printer().mirror() == MirrorBy.DRIVER
                    ? room.page().width().mm() - x
                    : x;
            double i = paper / room.printer().scaleX() * DPI / 25.4;
            double j = (room.page().height().mm() - y / room.printer().scaleY()) * DPI / 25.4;
            return file.getRGB((int) i, (int) j) & 0xFFFFFF;
        }
    }
}
