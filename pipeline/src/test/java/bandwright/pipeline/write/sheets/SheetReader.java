package bandwright.pipeline.write.sheets;

import bandwright.rules.units.Box;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Sheets as readers of PDF see them: the library's own, and poppler's tools where they are installed. */
final class SheetReader {
    private SheetReader() {}

    static BufferedImage drawn(Path pdf, int page, int dpi) {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new PDFRenderer(document).renderImageWithDPI(page, dpi, ImageType.RGB);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The page with every transfer taken away: what is left is ink that must not come under heat. */
    static BufferedImage drawnWithoutPictures(Path pdf, int index, int dpi) {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            PDPage page = document.getPage(index);
            for (COSName name : page.getResources().getXObjectNames()) {
                if (name.getName().startsWith(Transfers.NAME)) {
                    PDFormXObject empty = new PDFormXObject(document);
                    empty.setBBox(page.getMediaBox());
                    page.getResources().put(name, empty);
                }
            }
            return new PDFRenderer(document).renderImageWithDPI(index, dpi, ImageType.RGB);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static boolean hasPoppler() {
        try {
            run("pdftoppm", "-v");
            return true;
        } catch (UncheckedIOException e) {
            return false;
        }
    }

    static BufferedImage drawnByPoppler(Path pdf, int page, int dpi) {
        String number = String.valueOf(page + 1);
        Path root = pdf.resolveSibling("poppler-" + number);
        run(
                "pdftoppm",
                "-r",
                String.valueOf(dpi),
                "-f",
                number,
                "-l",
                number,
                "-singlefile",
                "-png",
                pdf.toString(),
                root.toString());
        try {
            return ImageIO.read(Path.of(root + ".png").toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String run(String... command) {
        try {
            Path log = Files.createTempFile("reader", ".txt");
            Process process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(log.toFile())
                    .start();
            if (!process.waitFor(60, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new IOException(command[0] + " does not end");
            }
            String said = Files.readString(log, StandardCharsets.UTF_8);
            Files.delete(log);
            return said;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /** Millimetre boxes of all dark pixels, in runs along the rows, on a page of that height. */
    static List<double[]> ink(BufferedImage page, double heightMm, int dpi) {
        double mm = 25.4 / dpi;
        List<double[]> ink = new ArrayList<>();
        for (int y = 0; y < page.getHeight(); y++) {
            int start = -1;
            for (int x = 0; x <= page.getWidth(); x++) {
                boolean dark = x < page.getWidth() && (page.getRGB(x, y) & 255) < 160;
                if (dark && start < 0) {
                    start = x;
                }
                if (!dark && start >= 0) {
                    ink.add(new double[] {start * mm, heightMm - (y + 1) * mm, x * mm, heightMm - y * mm});
                    start = -1;
                }
            }
        }
        return ink;
    }

    /** How deep a run of ink reaches into a box, in millimetres; negative = it stays outside. */
    static double reach(double[] ink, Box box) {
        return Math.min(
                Math.min(ink[2] - box.x().mm(), box.right().mm() - ink[0]),
                Math.min(ink[3] - box.y().mm(), box.top().mm() - ink[1]));
    }
}
