package bandwright.pipeline.write.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.Orientation;
import bandwright.pipeline.size.Layer;
import bandwright.pipeline.write.sheets.DrawnArtwork;
import bandwright.rules.blanks.Sector;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures computed anew for a cone, read back as a PDF reader unpacks them. */
class BentPictureTest {
    private static final Sector SECTOR =
            new Sector(Length.mm(200), Length.mm(240), Length.mm(220), 80 / 220.0 / 2, true);
    private static final Box FLAT = Box.of(Length.mm(80), Length.mm(40));

    @TempDir
    Path folder;

    @Test
    void oneColourStaysThatColourUpToTheEdge() throws IOException {
        BufferedImage plain = new BufferedImage(400, 200, BufferedImage.TYPE_INT_RGB);
        fill(plain, new Color(200, 30, 90));
        Bent bent = bent(png(plain), 360);
        bent.everyPixelInside(0, (rgb, u, v) -> assertThat(rgb & 0xFFFFFF).isEqualTo(0xC81E5A));
    }

    /** A checkerboard of single pixels, eight times as fine as the paper: an even grey, no pattern of its own. */
    @Test
    void finePatternsAreAveragedAndMakeNoNewOnes() throws IOException {
        BufferedImage board = new BufferedImage(4000, 2000, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < board.getHeight(); y++) {
            for (int x = 0; x < board.getWidth(); x++) {
                board.setRGB(x, y, (x + y) % 2 == 0 ? 0xFFFFFF : 0);
            }
        }
        Bent bent = bent(png(board), 160);
        bent.everyPixelInside(1, (rgb, u, v) -> assertThat(rgb & 255).isBetween(118, 138));
    }

    /** Stripes at two thirds of what the paper can show stay clearly apart. */
    @Test
    void whatThePaperCanShowIsNotSmearedAway() throws IOException {
        BufferedImage stripes = new BufferedImage(800, 400, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < stripes.getHeight(); y++) {
            for (int x = 0; x < stripes.getWidth(); x++) {
                stripes.setRGB(x, y, x / 2 % 2 == 0 ? 0xFFFFFF : 0);
            }
        }
        Bent bent = bent(png(stripes), 360);
        int[] counts = new int[3];
        bent.everyPixelInside(1, (rgb, u, v) -> counts[(rgb & 255) < 64 ? 0 : (rgb & 255) > 191 ? 2 : 1]++);
        // Black and white make up most of it; smeared stripes would be grey all over.
        assertThat(counts[0] + counts[2]).isGreaterThan(2 * counts[1]);
    }

    @Test
    void alphaIsKeptAndColoursBesideNothingDoNotDarken() throws IOException {
        BufferedImage half = new BufferedImage(400, 200, BufferedImage.TYPE_INT_ARGB);
        for (int y = 0; y < 200; y++) {
            for (int x = 0; x < 400; x++) {
                half.setRGB(x, y, x < 200 ? 0xFFFFD200 : x < 300 ? 0x80FFD200 : 0);
            }
        }
        Bent bent = bent(png(half), 360);
        bent.everyPixelInside(1, (argb, u, v) -> {
            int alpha = argb >>> 24;
            if (u < 39) {
                assertThat(alpha).isEqualTo(255);
            } else if (u > 41 && u < 59) {
                assertThat(alpha).isEqualTo(128);
            } else if (u > 61) {
                assertThat(alpha).isZero();
            }
            if (alpha > 8) {
                assertThat(argb >> 16 & 255).as("red at %f", u).isGreaterThan(250);
                assertThat(argb >> 8 & 255).as("green at %f", u).isCloseTo(210, within(5));
            }
        });
    }

    @ParameterizedTest
    @ValueSource(ints = {BufferedImage.TYPE_BYTE_GRAY, BufferedImage.TYPE_USHORT_GRAY, BufferedImage.TYPE_BYTE_INDEXED})
    void everyKindOfPixelsIsRead(int type) throws IOException {
        BufferedImage picture = new BufferedImage(400, 200, type);
        fill(picture, Color.WHITE);
        Graphics2D g = picture.createGraphics();
        g.setColor(Color.BLACK);
        g.fillRect(200, 0, 200, 200);
        g.dispose();
        Bent bent = bent(png(picture), 300);
        bent.everyPixelInside(1, (rgb, u, v) -> {
            if (Math.abs(u - 40) > 1) {
                assertThat(rgb & 0xFFFFFF).as("at %f", u).isEqualTo(u < 40 ? 0xFFFFFF : 0);
            }
        });
    }

    @Test
    void aTurnedPhotographIsSeenUpright() throws IOException {
        BufferedImage seen = new BufferedImage(400, 200, BufferedImage.TYPE_INT_RGB);
        fill(seen, Color.WHITE);
        Graphics2D g = seen.createGraphics();
        g.setColor(Color.RED);
        g.fillRect(0, 0, 200, 100);
        g.dispose();
        // Tag 6 (TIFF 6.0): the stored first row is seen at the right, the stored first column at the top.
        BufferedImage stored = new BufferedImage(200, 400, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < 400; y++) {
            for (int x = 0; x < 200; x++) {
                stored.setRGB(x, y, seen.getRGB(399 - y, x));
            }
        }
        Bent bent = bent(DrawnArtwork.write(folder, "t.png", stored, "png", Orientation.RIGHT_TOP), 300);
        bent.everyPixelInside(1, (rgb, u, v) -> {
            if (Math.abs(u - 40) > 1 && Math.abs(v - 20) > 1) {
                boolean isUpperLeft = u < 40 && v > 20;
                assertThat(rgb & 0xFFFFFF).as("at %f, %f", u, v).isEqualTo(isUpperLeft ? 0xFF0000 : 0xFFFFFF);
            }
        });
    }

    @Test
    void itHasThePicturesOwnPixelsOrTheShopsLimit() throws IOException {
        ArtworkFile coarse = png(new BufferedImage(400, 200, BufferedImage.TYPE_INT_RGB));
        // 400 pixels on 80 mm half-way up are 5.5 a millimetre on the smaller arc.
        assertThat(Bending.of(layer(coarse), SECTOR, 360).perMm()).isCloseTo(5.5, within(1e-9));
        ArtworkFile fine = png(new BufferedImage(4000, 2000, BufferedImage.TYPE_INT_RGB));
        assertThat(Bending.of(layer(fine), SECTOR, 360).perMm()).isCloseTo(360 / 25.4, within(1e-9));
    }

    private Bent bent(ArtworkFile artwork, double mostAnInch) throws IOException {
        Bending bending = Bending.of(layer(artwork), SECTOR, mostAnInch);
        Path scratch = Files.createDirectories(folder.resolve("scratch"));
        try (PDDocument document = new PDDocument()) {
            PreparedPictures prepared = new PreparedPictures(scratch);
            prepared.ahead(List.of(), List.of(bending), Optional.empty());
            PDImageXObject image = new Pictures(document, prepared, Optional.empty()).of(bending);
            return new Bent(image.getImage(), bending);
        }
    }

    private ArtworkFile png(BufferedImage image) {
        ArtworkFile file = DrawnArtwork.png(folder, "p" + image.getWidth() + ".png", image);
        assertThat(file.kind()).isEqualTo(ArtworkFile.Kind.PNG);
        return file;
    }

    private static Layer.Picture layer(ArtworkFile artwork) {
        return new Layer.Picture(artwork, FLAT, FLAT);
    }

    private static void fill(BufferedImage image, Color colour) {
        Graphics2D g = image.createGraphics();
        g.setColor(colour);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.dispose();
    }

    private interface Look {
        void at(int argb, double u, double v);
    }

    private record Bent(BufferedImage image, Bending bending) {
        /** Those whose middle lies in the sector, and that many millimetres from its edge. */
        void everyPixelInside(double border, Look look) {
            int looked = 0;
            Box box = bending.box();
            for (int j = 0; j < image.getHeight(); j++) {
                for (int i = 0; i < image.getWidth(); i++) {
                    double x = box.x().mm() + (i + 0.5) / bending.perMm();
                    double y = box.top().mm() - (j + 0.5) / bending.perMm();
                    double u = SECTOR.u(x, y);
                    double v = SECTOR.v(x, y);
                    if (u >= border && u <= 80 - border && v >= border && v <= 40 - border) {
                        looked++;
                        look.at(image.getRGB(i, j), u, v);
                    }
                }
            }
            assertThat(looked).isGreaterThan(20_000);
        }
    }
}
