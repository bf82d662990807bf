package bandwright.pipeline.write.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.Orientation;
import bandwright.pipeline.size.Layer;
import bandwright.pipeline.size.Transfer;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.tile.Rotation;
import bandwright.pipeline.tile.Sheet;
import bandwright.pipeline.write.SheetFile;
import bandwright.pipeline.write.sheets.check.SheetsCheck;
import bandwright.rules.paper.MirrorBy;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import bandwright.rules.units.Rgb;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetsTest {
    private static final int DPI = 72;

    @TempDir
    Path folder;

    /** Points by ISO 216 and ANSI Y14.1: millimetres x 72 / 25.4, to four decimals. */
    @ParameterizedTest
    @CsvSource({
        "Letter, 215.9, 279.4, 612, 792",
        "Legal, 215.9, 355.6, 612, 1008",
        "Tabloid, 279.4, 431.8, 792, 1224",
        "A4, 210, 297, 595.2756, 841.8898",
        "A3, 297, 420, 841.8898, 1190.5512",
    })
    void aPageIsExactlyThePaper(String name, double width, double height, float across, float up) throws Exception {
        PaperRoom room =
                PaperRoom.of(SheetShop.paper("p", name, width, height), SheetShop.printer(MirrorBy.FILE, 1, 1));
        Path pdf = written(new Sheet(room, List.of(mug(room, 20, 20, Rotation.R90))));
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            assertThat(document.getPage(0).getMediaBox().getWidth()).isCloseTo(across, within(0.0001f));
            assertThat(document.getPage(0).getMediaBox().getHeight()).isCloseTo(up, within(0.0001f));
        }
    }

    /** The drawn page, with the printer's scale and flip done and the picture un-mirrored, is the artwork. */
    @ParameterizedTest
    @CsvSource({
        "R0, FILE, 1, 1", "R90, FILE, 1, 1", "R180, FILE, 1, 1", "R270, FILE, 1, 1",
        "R0, DRIVER, 1, 1", "R90, DRIVER, 1, 1", "R180, DRIVER, 1, 1", "R270, DRIVER, 1, 1",
        "R90, FILE, 0.98, 1.015", "R270, DRIVER, 0.98, 1.015", "R0, DRIVER, 1.01, 0.99",
    })
    void thePrintedPictureIsTheArtworkMirroredOnceAndTurned(
            Rotation rotation, MirrorBy mirror, double scaleX, double scaleY) {
        PaperRoom room = SheetShop.letter(SheetShop.printer(mirror, scaleX, scaleY));
        BufferedImage artwork = DrawnArtwork.patches(480, 240, 7);
        Transfer transfer = SheetShop.covering(DrawnArtwork.png(folder, "l.png", artwork), 160, 80);
        Placed placed = SheetShop.placed(SheetShop.unit("Q1", 1, transfer, room), 1, 22, 31, rotation);
        Path pdf = written(new Sheet(room, List.of(placed)));
        assertThat(farOff(new Printed(SheetReader.drawn(pdf, 0, DPI), room, DPI), placed, artwork))
                .isLessThan(0.01);
        assertThat(farOff(new Printed(SheetReader.drawn(pdf, 0, DPI), room, DPI), placed, flipped(artwork)))
                .as("and it can tell a mirrored one")
                .isGreaterThan(0.2);
        if (SheetReader.hasPoppler()) {
            assertThat(farOff(new Printed(SheetReader.drawnByPoppler(pdf, 0, DPI), room, DPI), placed, artwork))
                    .isLessThan(0.01);
        }
    }

    @ParameterizedTest
    @CsvSource({"1", "2", "3", "4", "5", "6", "7", "8"})
    void aTaggedPictureIsSeenUpright(int tag) {
        PaperRoom room = SheetShop.letter();
        BufferedImage seen = DrawnArtwork.patches(480, 240, 7);
        Orientation orientation = Orientation.ofTag(tag);
        BufferedImage stored = TaggedPictures.stored(seen, orientation);
        Transfer transfer =
                SheetShop.covering(DrawnArtwork.write(folder, "t.png", stored, "png", orientation), 160, 80);
        Placed placed = SheetShop.placed(SheetShop.unit("Q1", 1, transfer, room), 1, 22, 31, Rotation.R90);
        Path pdf = written(new Sheet(room, List.of(placed)));
        assertThat(farOff(new Printed(SheetReader.drawn(pdf, 0, DPI), room, DPI), placed, seen))
                .isLessThan(0.01);
        SheetFile meant = new SheetFile("sheets/letter-01.pdf", List.of(new Sheet(room, List.of(placed))));
        assertThat(SheetsCheck.differences(pdf, meant)).isEmpty();
    }

    @Test
    void aCroppedPictureOnABackgroundKeepsToItsClip() {
        PaperRoom room = SheetShop.letter();
        ArtworkFile artwork = DrawnArtwork.png(folder, "l.png", DrawnArtwork.lighthouse(480, 240, 7));
        Box box = Box.of(Length.mm(160), Length.mm(80));
        Box clip = new Box(Length.mm(40), Length.mm(10), Length.mm(80), Length.mm(60));
        Transfer transfer = new Transfer(
                box.width(),
                box.height(),
                List.of(new Layer.Fill(box, new Rgb(20, 90, 160)), new Layer.Picture(artwork, box, clip)));
        Placed placed = SheetShop.placed(SheetShop.unit("Q1", 1, transfer, room), 1, 22, 31, Rotation.R0);
        Printed printed = new Printed(SheetReader.drawn(written(new Sheet(room, List.of(placed))), 0, DPI), room, DPI);
        assertThat(printed.at(22 + 160 - 30, 31 + 40)).as("left of the clip").isEqualTo(0x145AA0);
        assertThat(printed.at(22 + 160 - 130, 31 + 40)).as("right of the clip").isEqualTo(0x145AA0);
        assertThat(printed.at(22 + 160 - 80, 31 + 40)).as("inside").isNotEqualTo(0x145AA0);
        assertThat(printed.at(20, 31 + 40)).as("outside the transfer").isEqualTo(0xFFFFFF);
    }

    @Test
    void aPictureOnFiftyUnitsIsStoredOnceAFile() throws Exception {
        PaperRoom room = SheetShop.letter();
        Transfer transfer =
                SheetShop.covering(DrawnArtwork.jpeg(folder, "l.jpeg", DrawnArtwork.lighthouse(1200, 1200, 7)), 98, 98);
        List<Sheet> sheets = new ArrayList<>();
        for (int i = 1; i <= 50; i++) {
            sheets.add(new Sheet(
                    room,
                    List.of(SheetShop.placed(SheetShop.unit("Q" + i, 1, transfer, room), i, 20, 20, Rotation.R0))));
        }
        SheetFile file = new SheetFile("sheets/letter-01.pdf", sheets);
        Path pdf = WrittenSheets.write(file, folder.resolve("letter-01.pdf"));
        long picture = Files.size(folder.resolve("l.jpeg"));
        assertThat(Files.size(pdf)).isLessThan(picture + 50 * 2_500 + 60_000);
        assumeTrue(SheetReader.hasPoppler());
        List<String> objects = SheetReader.run("pdfimages", "-list", pdf.toString())
                .lines()
                .skip(2)
                .map(line -> List.of(line.trim().split(" +", -1)).get(10))
                .toList();
        assertThat(objects).isNotEmpty();
        assertThat(objects).as("the same object on every page").containsOnly(objects.get(0));
        assertThat(SheetReader.run("pdfinfo", pdf.toString()))
                .contains("Pages:           50")
                .contains("Page size:       612 x 792 pts (letter)")
                .contains("Title:           Print sheets letter-01.pdf, run 2026-03-02-1");
        assertThat(SheetReader.run("pdfinfo", pdf.toString())).doesNotContain("Error");
    }

    /** What a flag and its share of a page cost: 640 of them stay below a tenth of a weekend's 60 photos. */
    @Test
    void flagsAndMarksCostLittle() throws Exception {
        PaperRoom room = SheetShop.letter();
        Transfer coaster =
                SheetShop.covering(DrawnArtwork.jpeg(folder, "l.jpeg", DrawnArtwork.lighthouse(300, 300, 7)), 60, 60);
        List<Sheet> sheets = new ArrayList<>();
        for (int i = 0; i < 160; i++) {
            List<Placed> placed = new ArrayList<>();
            for (int j = 0; j < 4; j++) {
                Unit unit = SheetShop.unit("Q" + (1000 + 7 * i + j), j + 1, coaster, room);
                placed.add(SheetShop.placed(unit, i, 8 + 90 * (j % 2), 8 + 90 * (j / 2), Rotation.R0));
            }
            sheets.add(new Sheet(room, placed));
        }
        SheetFile file = new SheetFile("sheets/letter-01.pdf", sheets);
        Path pdf = WrittenSheets.write(file, folder.resolve("letter-01.pdf"));
        long overhead = Files.size(pdf) - Files.size(folder.resolve("l.jpeg"));
        // 60 photos of 0.4 MB and more are 24 MB.
        assertThat(overhead).isLessThan(1_400_000);
    }

    @Test
    void theSameRunGivesTheSameBytes() throws Exception {
        PaperRoom room = SheetShop.letter();
        Sheet sheet = new Sheet(room, List.of(mug(room, 20, 20, Rotation.R90)));
        byte[] first = Files.readAllBytes(written(sheet));
        byte[] second = Files.readAllBytes(written(sheet));
        assertThat(second).isEqualTo(first);
    }

    @Test
    void theFileAsksTheViewerForNoScaling() throws Exception {
        PaperRoom room = SheetShop.letter();
        Path pdf = written(new Sheet(room, List.of(mug(room, 20, 20, Rotation.R90))));
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            PDViewerPreferences preferences = document.getDocumentCatalog().getViewerPreferences();
            assertThat(preferences.getPrintScaling()).isEqualTo("None");
            assertThat(preferences.getCOSObject().getBoolean("PickTrayByPDFSize", false))
                    .isTrue();
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
            assertThat(document.getDocumentCatalog().getOutputIntents()).hasSize(1);
        }
    }

    private Placed mug(PaperRoom room, double x, double y, Rotation rotation) {
        ArtworkFile artwork = DrawnArtwork.jpeg(folder, "mug.jpeg", DrawnArtwork.lighthouse(700, 330, 11));
        return SheetShop.placed(
                SheetShop.unit("Q1042", 1, SheetShop.covering(artwork, 212.73, 95.25), room), 3, x, y, rotation);
    }

    private Path written(Sheet sheet) {
        return WrittenSheets.write(
                new SheetFile("sheets/letter-01.pdf", List.of(sheet)), folder.resolve("letter-01.pdf"));
    }

    private static BufferedImage flipped(BufferedImage image) {
        return TaggedPictures.stored(image, Orientation.TOP_RIGHT);
    }

    /** The mean difference of 20 x 10 places of the picture, 0 to 1: u from its left, v from its foot. */
    private static double farOff(Printed printed, Placed placed, BufferedImage artwork) {
        double sum = 0;
        for (int i = 0; i < 20; i++) {
            for (int j = 0; j < 10; j++) {
                double u = (i + 0.5) / 20;
                double v = (j + 0.5) / 10;
                int want = artwork.getRGB((int) (u * artwork.getWidth()), (int) ((1 - v) * artwork.getHeight()));
                int got = printed.pictureAt(placed, u, v);
                sum += (Math.abs((want >> 16 & 255) - (got >> 16 & 255))
                                + Math.abs((want >> 8 & 255) - (got >> 8 & 255))
                                + Math.abs((want & 255) - (got & 255)))
                        / (3 * 255.0);
            }
        }
        return sum / 200;
    }

    /** A drawn file page as it comes out of the printer. */
    private record Printed(BufferedImage file, PaperRoom room, int dpi) {
        int at(double xMm, double yMm) {
            double paper = room.printer().mirror() == MirrorBy.DRIVER
                    ? room.page().width().mm() - xMm
                    : xMm;
            double x = paper / room.printer().scaleX() * dpi / 25.4;
            double y = (room.page().height().mm() - yMm / room.printer().scaleY()) * dpi / 25.4;
            return file.getRGB((int) x, (int) y) & 0xFFFFFF;
        }

        /** The four cases written out, as the outbox contract puts them: flipped left-right, then turned. */
        int pictureAt(Placed placed, double u, double v) {
            Box box = placed.box();
            double flipped = 1 - u;
            double across =
                    switch (placed.rotation()) {
                        case R0 -> flipped;
                        case R90 -> 1 - v;
                        case R180 -> 1 - flipped;
                        case R270 -> v;
                    };
            double up =
                    switch (placed.rotation()) {
                        case R0 -> v;
                        case R90 -> flipped;
                        case R180 -> 1 - v;
                        case R270 -> 1 - flipped;
                    };
            return at(
                    box.x().mm() + across * box.width().mm(),
                    box.y().mm() + up * box.height().mm());
        }
    }
}
