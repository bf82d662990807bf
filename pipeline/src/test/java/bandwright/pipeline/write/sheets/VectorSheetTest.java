package bandwright.pipeline.write.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.ArtworkShelf;
import bandwright.pipeline.artwork.Found;
import bandwright.pipeline.size.Layer;
import bandwright.pipeline.size.Transfer;
import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.tile.Rotation;
import bandwright.pipeline.tile.Sheet;
import bandwright.pipeline.write.SheetFile;
import bandwright.pipeline.write.sheets.check.SheetsCheck;
import bandwright.rules.blanks.Sector;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.awt.Shape;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** SVG and PDF artwork on a page: shapes stay shapes, where they belong, straight and bent. */
class VectorSheetTest {
    private static final double WIDTH = 150;
    private static final double HEIGHT = 75;

    /** Red 255, green 51, blue 0 in thousandths. */
    private static final int[] RED = {1000, 200, 0};

    @TempDir
    Path folder;

    private final PaperRoom room = SheetShop.letter();

    /** A lighthouse lamp, not like its mirror image: a red box at the upper left, a blue disc at the right. */
    private static final String LAMP = """
            <svg xmlns="http://www.w3.org/2000/svg" width="200" height="100">
            <rect x="20" y="10" width="60" height="30" fill="#ff3300"/>
            <circle cx="150" cy="50" r="25" fill="#0033ff"/></svg>""";

    @Test
    void aBoxOfAnSvgLandsInItsPlace() throws IOException {
        Path pdf = written(straight(svg("lamp.svg", LAMP)));
        Rectangle2D box = FilledShapes.only(pdf, RED[0], RED[1], RED[2]).getBounds2D();
        // 20/200 of 150 mm from the left, but mirrored; 10/100 of 75 mm from above.
        assertThat(box.getMaxX()).isEqualTo(22 + 150 - 15, within(0.01));
        assertThat(box.getMinX()).isEqualTo(22 + 150 - 60, within(0.01));
        assertThat(box.getMaxY()).isEqualTo(31 + 75 - 7.5, within(0.01));
        assertThat(box.getMinY()).isEqualTo(31 + 75 - 30, within(0.01));
    }

    @ParameterizedTest
    @CsvSource({"0", "90", "180", "270"})
    void aBoxOfATurnedAndCroppedPageLandsInItsPlace(int rotate) throws IOException {
        ArtworkFile artwork = turned(rotate);
        boolean swaps = rotate % 180 != 0;
        assertThat(artwork.pixelWidth()).isEqualTo(swaps ? 100_000 : 200_000);
        double width = swaps ? 75 : 150;
        double height = swaps ? 150 : 75;
        Transfer transfer = SheetShop.covering(artwork, width, height);
        Placed placed = SheetShop.placed(SheetShop.unit("Q1", 1, transfer, room), 1, 22, 31, Rotation.R0);
        Path pdf = written(placed);
        Rectangle2D box = FilledShapes.only(pdf, RED[0], RED[1], RED[2]).getBounds2D();
        // Seen unturned it lies 20 to 80 from the left and 10 to 40 from above, of 200 x 100; 0.75 mm a point.
        double[] left = {20, 60, 120, 10};
        double[] top = {10, 20, 60, 120};
        int turn = rotate / 90;
        assertThat(box.getMaxX()).isEqualTo(22 + width - 0.75 * left[turn], within(0.01));
        assertThat(box.getMaxY()).isEqualTo(31 + height - 0.75 * top[turn], within(0.01));
        assertThat(box.getWidth()).isEqualTo(0.75 * (swaps ? 30 : 60), within(0.01));
        assertThat(differences(pdf, placed)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"svg, true", "svg, false", "pdf, true", "pdf, false"})
    void bentOutlinesFollowTheTrueCurve(String kind, boolean rimIsOuter) throws IOException {
        ArtworkFile artwork = kind.equals("svg") ? svg("lamp.svg", LAMP) : turned(0);
        Sector sector = sector(rimIsOuter);
        Placed placed = bent(artwork, sector);
        Path pdf = written(placed);
        Shape red = FilledShapes.only(pdf, RED[0], RED[1], RED[2]);
        Box box = placed.box();
        int points = 0;
        double far = 0;
        double[] p = new double[6];
        for (PathIterator i = new FlatteningPathIterator(red.getPathIterator(null), 1e-4); !i.isDone(); i.next()) {
            if (i.currentSegment(p) == PathIterator.SEG_CLOSE) {
                continue;
            }
            // Mirrored back, from the apex: the angle is the way along the wall, the distance the way up.
            double x = box.right().mm() - p[0] - box.width().mm() / 2;
            double up = p[1] - box.y().mm();
            double fromApex = rimIsOuter
                    ? up - (box.height().mm() - sector.outer().mm())
                    : sector.outer().mm() - up;
            double radius = Math.hypot(x, fromApex);
            double u = WIDTH / 2 + Math.atan2(x, fromApex) * sector.middle().mm();
            double v =
                    rimIsOuter ? radius - sector.inner().mm() : sector.outer().mm() - radius;
            far = Math.max(far, outside(u, v));
            points++;
        }
        assertThat(points).isGreaterThan(20);
        assertThat(far).as("millimetres from the box's sides").isLessThan(0.02);
        assertThat(differences(pdf, placed)).isEmpty();
    }

    /** How far a point of the flat band is from the sides of the red box, 15 to 60 mm and 45 to 67.5 mm. */
    private static double outside(double u, double v) {
        double toSide = Math.min(Math.abs(u - 15), Math.abs(u - 60));
        double toEdge = Math.min(Math.abs(v - 45), Math.abs(v - 67.5));
        double beyond = Math.max(Math.max(15 - u, u - 60), Math.max(45 - v, v - 67.5));
        return Math.max(beyond, Math.min(toSide, toEdge));
    }

    @Test
    void aGradientIsBentAsPixels() throws IOException {
        ArtworkFile artwork = svg("glow.svg", """
                <svg xmlns="http://www.w3.org/2000/svg" width="200" height="100"><linearGradient id="g">\
                <stop offset="0" stop-color="red"/><stop offset="1" stop-color="blue"/></linearGradient>\
                <rect width="200" height="60" fill="url(#g)"/></svg>""");
        Placed placed = bent(artwork, sector(true));
        assertThat(differences(written(placed), placed)).isEmpty();
    }

    @Test
    void aFileIsStoredOnceHoweverOftenAndByWhateverNameItIsUsed() throws IOException {
        StringBuilder many =
                new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"200\" height=\"100\">");
        for (int i = 0; i < 3000; i++) {
            many.append("<circle cx=\"%d\" cy=\"%d\" r=\"3\"/>".formatted(i * 37 % 200, i * 61 % 100));
        }
        ArtworkFile one = svg("a.svg", many + "</svg>");
        ArtworkFile other = svg("b.svg", many + "</svg>");
        long once = Files.size(written(placed(one, 150, 22)));
        Path twice = written(placed(one, 90, 22), placed(one, 80, 100), placed(other, 70, 180));
        assertThat(Files.size(twice)).isLessThan(once + 6_000);
        assertThat(once).isGreaterThan(20_000);
    }

    @Test
    void theSameDrawingGivesTheSameBytes() throws IOException {
        for (ArtworkFile artwork : List.of(svg("lamp.svg", LAMP), turned(90))) {
            byte[] first = Files.readAllBytes(written(straight(artwork)));
            assertThat(Files.readAllBytes(written(straight(artwork)))).isEqualTo(first);
        }
    }

    @Test
    void theReadBackSeesAnotherDrawing() throws IOException {
        ArtworkFile artwork = svg("lamp.svg", LAMP);
        for (Placed placed : List.of(straight(artwork), bent(artwork, sector(true)))) {
            Path pdf = written(placed);
            assertThat(differences(pdf, placed)).isEmpty();
            svg("lamp.svg", LAMP.replace("cx=\"150\"", "cx=\"100\""));
            assertThat(differences(pdf, placed)).isNotEmpty();
            svg("lamp.svg", LAMP);
        }
    }

    @Test
    void nothingButThePictureComesOutOfAPdf() throws IOException {
        Path pdf = written(straight(turned(0)));
        String text = Files.readString(pdf, StandardCharsets.ISO_8859_1);
        assertThat(text)
                .doesNotContain("JavaScript", "Launch", "PieceInfo", "secret")
                .contains("/Matrix");
    }

    private ArtworkFile svg(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
        return found(name);
    }

    private ArtworkFile found(String name) throws IOException {
        Found found = ArtworkShelf.open(folder).find(name);
        assertThat(found).isInstanceOf(Found.Picture.class);
        return ((Found.Picture) found).artwork();
    }

    /** The same lamp on a larger page, whose crop box shows 200 x 100 points of it. */
    private ArtworkFile turned(int rotate) throws IOException {
        String name = "lamp" + rotate + ".pdf";
        try (PDDocument document = new PDDocument()) {
            document.setDocumentId(7L);
            PDPage page = new PDPage(new PDRectangle(500, 400));
            page.setCropBox(new PDRectangle(50, 70, 200, 100));
            page.setRotation(rotate);
            document.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                content.setNonStrokingColor(1f, 0.2f, 0f);
                content.addRect(70, 130, 60, 30);
                content.fill();
                content.setNonStrokingColor(0f, 0.2f, 1f);
                content.addRect(175, 95, 50, 50);
                content.fill();
            }
            document.save(folder.resolve(name).toFile());
        }
        return found(name);
    }

    private Placed straight(ArtworkFile artwork) {
        return placed(artwork, WIDTH, 31);
    }

    private Placed placed(ArtworkFile artwork, double width, double y) {
        Transfer transfer = SheetShop.covering(artwork, width, width / 2);
        return SheetShop.placed(SheetShop.unit("Q" + (int) width, 1, transfer, room), 1, 22, y, Rotation.R0);
    }

    private Placed bent(ArtworkFile artwork, Sector sector) {
        Box flat = Box.of(Length.mm(WIDTH), Length.mm(HEIGHT));
        Transfer transfer = new Transfer(
                flat.width(), flat.height(), List.of(new Layer.Picture(artwork, flat, flat)), Optional.of(sector));
        Box box = transfer.box().shifted(Length.mm(22), Length.mm(31));
        return new Placed(SheetShop.unit("Q1", 1, transfer, room), 1, box, Rotation.R0, Optional.empty());
    }

    private static Sector sector(boolean rimIsOuter) {
        double middle = 200 + HEIGHT / 2;
        return new Sector(Length.mm(200), Length.mm(200 + HEIGHT), Length.mm(middle), WIDTH / middle / 2, rimIsOuter);
    }

    private Path written(Placed... placed) {
        SheetFile file = new SheetFile("sheets/letter-01.pdf", List.of(new Sheet(room, List.of(placed))));
        return WrittenSheets.write(file, folder.resolve("letter-01.pdf"));
    }

    private List<String> differences(Path pdf, Placed placed) {
        return SheetsCheck.differences(
                pdf, new SheetFile("sheets/letter-01.pdf", List.of(new Sheet(room, List.of(placed)))));
    }
}
