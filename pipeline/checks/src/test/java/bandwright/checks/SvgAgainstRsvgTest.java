package bandwright.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.ArtworkShelf;
import bandwright.pipeline.artwork.Found;
import bandwright.pipeline.artwork.vector.VectorArtwork;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.util.Matrix;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Small drawings, each of one thing: as pixels and as a part of a PDF, drawn by poppler, beside what librsvg makes. */
class SvgAgainstRsvgTest {
    private static final int WIDTH = 800;

    /** The mean difference of channels, 0 to 1: edges are smoothed differently, and nothing else. */
    private static final double MOST = 0.012;

    @TempDir
    Path folder;

    @TestFactory
    List<DynamicTest> eachLooksTheSame() throws IOException {
        assumeTrue(Programs.has("rsvg-convert") && Programs.has("pdftoppm"));
        Path drawings = drawings();
        try (Stream<Path> files = Files.list(drawings)) {
            List<Path> all = files.sorted().toList();
            assertThat(all).hasSizeGreaterThanOrEqualTo(50);
            return all.stream()
                    .map(file -> DynamicTest.dynamicTest(String.valueOf(file.getFileName()), () -> compare(file)))
                    .toList();
        }
    }

    @Test
    void itCanTellAnotherDrawing() throws IOException, InterruptedException {
        assumeTrue(Programs.has("rsvg-convert"));
        Path drawings = drawings();
        BufferedImage one = byRsvg(drawings.resolve("even-odd.svg"));
        BufferedImage other = byRsvg(drawings.resolve("nonzero.svg"));
        assertThat(difference(one, other)).isGreaterThan(10 * MOST);
    }

    private static Path drawings() {
        try {
            return Path.of(Objects.requireNonNull(SvgAgainstRsvgTest.class.getResource("svg"))
                    .toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e); // the class path names its folders rightly
        }
    }

    private void compare(Path file) throws IOException, InterruptedException {
        BufferedImage theirs = byRsvg(file);
        Found found = ArtworkShelf.open(drawings()).find(String.valueOf(file.getFileName()));
        assertThat(found).isInstanceOf(Found.Picture.class);
        ArtworkFile artwork = ((Found.Picture) found).artwork();
        try (VectorArtwork vector = VectorArtwork.open(artwork)) {
            BufferedImage ours = vector.pixels(theirs.getWidth(), theirs.getHeight());
            assertThat(difference(ours, theirs)).as("pixels").isLessThan(MOST);
            BufferedImage printed = byPoppler(vector, theirs.getWidth(), theirs.getHeight());
            assertThat(difference(printed, theirs)).as("PDF").isLessThan(MOST);
        }
    }

    private BufferedImage byRsvg(Path file) throws IOException, InterruptedException {
        Path png = folder.resolve(file.getFileName() + ".png");
        Programs.run("rsvg-convert", "-w", String.valueOf(WIDTH), "-a", "-o", png.toString(), file.toString());
        return ImageIO.read(png.toFile());
    }

    private BufferedImage byPoppler(VectorArtwork vector, int width, int height)
            throws IOException, InterruptedException {
        Path pdf = folder.resolve("drawing.pdf");
        try (PDDocument document = new PDDocument()) {
            COSArray space = new COSArray();
            space.add(COSName.DEVICERGB);
            PDPage page = new PDPage(new PDRectangle(width, height));
            document.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                content.transform(Matrix.getScaleInstance(width, height));
                content.drawForm(vector.form(document, space));
            }
            document.save(pdf.toFile());
        }
        Programs.run(
                "pdftoppm",
                "-r",
                "72",
                "-singlefile",
                "-png",
                pdf.toString(),
                folder.resolve("page").toString());
        Programs.run("qpdf", "--check", pdf.toString());
        return ImageIO.read(folder.resolve("page.png").toFile());
    }

    private static double difference(BufferedImage one, BufferedImage other) {
        assertThat(one.getWidth()).isEqualTo(other.getWidth());
        BufferedImage a = onWhite(one);
        BufferedImage b = onWhite(other);
        long sum = 0;
        for (int y = 0; y < a.getHeight(); y++) {
            for (int x = 0; x < a.getWidth(); x++) {
                int p = a.getRGB(x, y);
                int q = b.getRGB(x, y);
                sum += Math.abs((p >> 16 & 255) - (q >> 16 & 255))
                        + Math.abs((p >> 8 & 255) - (q >> 8 & 255))
                        + Math.abs((p & 255) - (q & 255));
            }
        }
        return sum / (3.0 * 255 * a.getWidth() * a.getHeight());
    }

    private static BufferedImage onWhite(BufferedImage image) {
        BufferedImage white = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = white.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.drawImage(image, 0, 0, null);
        g.dispose();
        return white;
    }
}
