package bandwright.checks.hostile;

import bandwright.checks.InkProfile;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;

/** Small sound drawings, a font and printers' profiles. */
final class DrawingSeeds {
    private static final String SANS = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private DrawingSeeds() {}

    /** The drawings that are held against another renderer. */
    static List<byte[]> svg() throws IOException {
        Path folder = Path.of("src", "test", "resources", "bandwright", "checks", "svg");
        List<byte[]> all = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.sorted().toList()) {
                all.add(Files.readAllBytes(file));
            }
        }
        return all;
    }

    /** One with its parts in the open, where a change of a byte says something, and one packed. */
    static List<byte[]> pdf() throws IOException {
        return List.of(pdf(CompressParameters.NO_COMPRESSION), pdf(CompressParameters.DEFAULT_COMPRESSION));
    }

    private static byte[] pdf(CompressParameters packing) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument();
                InputStream sans = DrawingSeeds.class.getResourceAsStream(SANS)) {
            PDPage page = new PDPage(new PDRectangle(200, 100));
            document.addPage(page);
            PDType0Font font = PDType0Font.load(document, sans);
            try (PDPageContentStream content =
                    new PDPageContentStream(document, page, PDPageContentStream.AppendMode.OVERWRITE, false)) {
                PDExtendedGraphicsState half = new PDExtendedGraphicsState();
                half.setNonStrokingAlphaConstant(0.5f);
                content.setGraphicsStateParameters(half);
                content.setNonStrokingColor(0.1f, 0.3f, 0.6f);
                content.addRect(10, 10, 80, 60);
                content.fill();
                content.setNonStrokingColor(0.2f, 0.1f, 0.9f, 0f);
                content.curveTo(1, 2, 30, 40, 50, 60);
                content.stroke();
                content.drawImage(
                        LosslessFactory.createFromImage(document, PictureSeeds.drawn(BufferedImage.TYPE_INT_ARGB)),
                        100,
                        20,
                        60,
                        40);
                content.beginText();
                content.setFont(font, 12);
                content.newLineAtOffset(20, 80);
                content.showText("Terns");
                content.endText();
            }
            document.save(out, packing);
        }
        return out.toByteArray();
    }

    static List<byte[]> font() throws IOException {
        try (InputStream in = DrawingSeeds.class.getResourceAsStream(SANS);
                TrueTypeFont whole = new TTFParser().parse(new RandomAccessReadBuffer(in))) {
            TTFSubsetter letters = new TTFSubsetter(whole);
            "AdaZoë fi0123H x".codePoints().forEach(letters::add);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            letters.writeToStream(out);
            return List.of(out.toByteArray());
        }
    }

    static List<byte[]> profile() {
        return List.of(InkProfile.bytes());
    }
}
