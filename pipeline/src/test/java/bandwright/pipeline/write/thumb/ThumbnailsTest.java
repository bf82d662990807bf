package bandwright.pipeline.write.thumb;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.Orientation;
import bandwright.pipeline.pixels.Sights;
import bandwright.pipeline.size.Layer;
import bandwright.pipeline.size.Transfer;
import bandwright.pipeline.write.sheets.DrawnArtwork;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import bandwright.rules.units.Rgb;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What a person sees in the small pictures, read at places whose colours are known. */
final class ThumbnailsTest {
    private static final Rgb RED = new Rgb(220, 30, 30);
    private static final Rgb GREEN = new Rgb(30, 160, 30);
    private static final Rgb BLUE = new Rgb(30, 30, 220);
    private static final Rgb SAND = new Rgb(240, 200, 60);
    private static final Rgb GREY = new Rgb(200, 200, 200);

    @TempDir
    Path folder;

    @ParameterizedTest
    @EnumSource(names = {"JPEG", "PNG"})
    void aPictureIsUprightAndNotMirrored(ArtworkFile.Kind kind) throws IOException {
        String format = kind.name().toLowerCase(Locale.ROOT);
        ArtworkFile artwork =
                DrawnArtwork.write(folder, "corners", corners(2000, 1000, false), format, Orientation.TOP_LEFT);

        BufferedImage seen = seen(whole(artwork, 200, 100));

        assertThat(seen.getWidth()).isEqualTo(320);
        assertThat(seen.getHeight()).isEqualTo(160);
        assertCorners(seen, RED, GREEN, BLUE, SAND);
    }

    /** Which colours a person sees at the top left and right, bottom left and right; TIFF 6.0, tag 274. */
    @ParameterizedTest
    @CsvSource({
        "TOP_LEFT, RED, GREEN, BLUE, SAND",
        "TOP_RIGHT, GREEN, RED, SAND, BLUE",
        "BOTTOM_RIGHT, SAND, BLUE, GREEN, RED",
        "BOTTOM_LEFT, BLUE, SAND, RED, GREEN",
        "LEFT_TOP, RED, BLUE, GREEN, SAND",
        "RIGHT_TOP, BLUE, RED, SAND, GREEN",
        "RIGHT_BOTTOM, SAND, GREEN, BLUE, RED",
        "LEFT_BOTTOM, GREEN, SAND, RED, BLUE",
    })
    void theOrientationTagIsObeyed(
            Orientation orientation, String topLeft, String topRight, String bottomLeft, String bottomRight)
            throws IOException {
        ArtworkFile artwork = DrawnArtwork.write(folder, "turned", corners(901, 601, false), "png", orientation);
        boolean turned = orientation.swapsSides();

        BufferedImage seen = seen(whole(artwork, turned ? 100 : 150, turned ? 150 : 100));

        assertCorners(seen, colour(topLeft), colour(topRight), colour(bottomLeft), colour(bottomRight));
    }

    @Test
    void onlyTheClipIsShownAndPaperStaysWhite() throws IOException {
        ArtworkFile artwork = DrawnArtwork.png(folder, "corners.png", corners(1000, 1000, false));
        // The picture would fill 200 x 100 mm twice over; its lower half is cut off, and so is the right quarter.
        Box place = new Box(Length.ZERO, Length.mm(-100), Length.mm(200), Length.mm(200));
        Box clip = Box.of(Length.mm(150), Length.mm(100));

        BufferedImage seen =
                seen(new Transfer(Length.mm(200), Length.mm(100), List.of(new Layer.Picture(artwork, place, clip))));

        assertColour(seen, 0.1, 0.1, RED);
        assertColour(seen, 0.1, 0.9, RED);
        assertColour(seen, 0.7, 0.9, GREEN);
        assertColour(seen, 0.9, 0.5, Rgb.WHITE);
    }

    @Test
    void whatIsClearShowsTheBackgroundUnderIt() throws IOException {
        ArtworkFile artwork = DrawnArtwork.png(folder, "clear.png", corners(600, 600, true));
        Box box = Box.of(Length.mm(100), Length.mm(100));
        Box left = Box.of(Length.mm(50), Length.mm(100));

        BufferedImage seen = seen(new Transfer(
                box.width(), box.height(), List.of(new Layer.Fill(left, BLUE), new Layer.Picture(artwork, box, box))));

        assertColour(seen, 0.25, 0.25, BLUE);
        assertColour(seen, 0.75, 0.25, GREEN);
        assertColour(seen, 0.75, 0.75, SAND);
    }

    @Test
    void finePatternsBecomeTheirMeanColour() throws IOException {
        BufferedImage fine = new BufferedImage(640, 640, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < 640 * 640; i++) {
            fine.setRGB(i % 640, i / 640, (i % 640 + i / 640) % 2 == 0 ? 0xFFFFFF : 0);
        }

        BufferedImage seen = seen(whole(DrawnArtwork.png(folder, "fine.png", fine), 100, 100));

        assertColour(seen, 0.5, 0.5, new Rgb(128, 128, 128));
    }

    @Test
    void aPictureThatCannotBeDecodedIsAGreyTile() throws IOException {
        Path broken = Files.write(folder.resolve("broken.jpg"), new byte[] {(byte) 0xFF, (byte) 0xD8, 1, 2, 3});
        ArtworkFile noPixels =
                new ArtworkFile("broken.jpg", broken, 5, ArtworkFile.Kind.JPEG, 3000, 2000, Orientation.RIGHT_TOP);
        ArtworkFile gone = new ArtworkFile(
                "gone.png", folder.resolve("gone.png"), 9, ArtworkFile.Kind.PNG, 30, 20, Orientation.TOP_LEFT);

        assertColour(seen(whole(noPixels, 100, 50)), 0.5, 0.5, GREY);
        assertColour(seen(whole(gone, 100, 50)), 0.5, 0.5, GREY);
    }

    @Test
    void likeTransfersShareOneAndTheSameBytesComeTwice() throws IOException {
        ArtworkFile artwork = DrawnArtwork.jpeg(folder, "tern.jpg", DrawnArtwork.lighthouse(1800, 900, 7));
        List<Transfer> three = List.of(whole(artwork, 200, 100), whole(artwork, 200, 90), whole(artwork, 200, 100));

        Thumbnails once = new Thumbnails(three, new Sights());
        Thumbnails again = new Thumbnails(three, new Sights());
        again.begin(); // beside the writers of other files, as a run does
        again.begin();

        assertThat(once.list()).hasSize(2).isEqualTo(again.list());
        assertThat(once.get(three.get(2))).isSameAs(once.get(three.get(0)));
    }

    @Test
    void manyAreSmallerEach() throws IOException {
        ArtworkFile artwork = DrawnArtwork.jpeg(folder, "tern.jpg", DrawnArtwork.lighthouse(600, 300, 8));
        List<Transfer> many = new ArrayList<>();
        for (int i = 0; i < 192; i++) {
            many.add(whole(artwork, 200, 60 + i * 0.1));
        }

        assertThat(new Thumbnails(many, new Sights()).list())
                .hasSize(192)
                .allMatch(thumbnail -> thumbnail.width() == 160);
    }

    private static Transfer whole(ArtworkFile artwork, double width, double height) {
        Box box = Box.of(Length.mm(width), Length.mm(height));
        return new Transfer(box.width(), box.height(), List.of(new Layer.Picture(artwork, box, box)));
    }

    private static BufferedImage seen(Transfer transfer) throws IOException {
        Thumbnail thumbnail = new Thumbnails(List.of(transfer), new Sights()).get(transfer);
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(thumbnail.bytes()));
        assertThat(image.getWidth()).isEqualTo(thumbnail.width());
        assertThat(image.getHeight()).isEqualTo(thumbnail.height());
        return image;
    }

    /** Four quarters: red and green over blue and sand; or a clear upper left one. */
    private static BufferedImage corners(int width, int height, boolean clear) {
        int type = clear ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB;
        BufferedImage image = new BufferedImage(width, height, type);
        Graphics2D g = image.createGraphics();
        Rgb[] colours = {RED, GREEN, BLUE, SAND};
        for (int i = clear ? 1 : 0; i < 4; i++) {
            Rgb rgb = colours[i];
            g.setColor(new Color(rgb.red(), rgb.green(), rgb.blue()));
            g.fillRect(i % 2 * width / 2, i / 2 * height / 2, width - width / 2, height - height / 2);
        }
        g.dispose();
        return image;
    }

    private static Rgb colour(String name) {
        return switch (name) {
            case "RED" -> RED;
            case "GREEN" -> GREEN;
            case "BLUE" -> BLUE;
            default -> SAND;
        };
    }

    private static void assertCorners(BufferedImage seen, Rgb topLeft, Rgb topRight, Rgb bottomLeft, Rgb bottomRight) {
        assertColour(seen, 0.2, 0.2, topLeft);
        assertColour(seen, 0.8, 0.2, topRight);
        assertColour(seen, 0.2, 0.8, bottomLeft);
        assertColour(seen, 0.8, 0.8, bottomRight);
    }

    private static void assertColour(BufferedImage seen, double x, double y, Rgb expected) {
        Color colour = new Color(seen.getRGB((int) (x * seen.getWidth()), (int) (y * seen.getHeight())));
        assertThat(List.of(colour.getRed(), colour.getGreen(), colour.getBlue()))
                .as("at %s, %s of %s", x, y, expected)
                .zipSatisfy(
                        List.of(expected.red(), expected.green(), expected.blue()),
                        (found, wanted) -> assertThat(found).isBetween(wanted - 8, wanted + 8));
    }
}
