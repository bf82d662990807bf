package bandwright.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import bandwright.pipeline.held.Outcome;
import bandwright.pipeline.type.SetText;
import bandwright.pipeline.type.TypeSetting;
import bandwright.rules.designs.Align;
import bandwright.rules.designs.Anchor;
import bandwright.rules.designs.FontFile;
import bandwright.rules.designs.TextField;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import bandwright.rules.units.Rgb;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Letters as they are set, beside FreeType's drawing of the same fonts, and with fonts of a shop's own from Debian. */
final class GlyphsTest {
    private static final int DPI = 1200;
    private static final double PER_MM = DPI / 25.4;

    /** In pixels: 0.05 mm. */
    private static final int CLOSE = 2;

    private static final double SIZE = 20;
    private static final Path DEVANAGARI = Path.of("/usr/share/fonts/truetype/lohit-devanagari/Lohit-Devanagari.ttf");
    private static final Path THAI = Path.of("/usr/share/fonts/truetype/tlwg/Loma.ttf");

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"a", "g", "Q", "R", "&", "9", "\u00DF", "\u0142", "\u03C9", "\u042F"})
    void aLettersOutlineIsWhatFreeTypeDraws(String letter) throws IOException, InterruptedException {
        assumeTrue(Programs.has("pdftoppm"), "needs poppler");
        boolean[][] set = ink(outlined(set(letter, "sans", List.of())));
        boolean[][] drawn = ink(byFreeType(letter));
        assertThat(set[0].length).isCloseTo(drawn[0].length, within(CLOSE));
        assertThat(set.length).isCloseTo(drawn.length, within(CLOSE));
        assertThat(strays(set, drawn)).isZero();
        assertThat(strays(drawn, set)).isZero();
        assertThat(strays(set, ink(byFreeType("x"))))
                .as("and it can tell another letter")
                .isPositive();
    }

    @Test
    void devanagariIsJoinedAndReordered() {
        assumeTrue(Files.exists(DEVANAGARI), "needs Debian's fonts-lohit-deva");
        // Ka, virama and ssa join to one letter, narrower than the two side by side.
        double joined = set("\u0915\u094D\u0937", "own", List.of(own(DEVANAGARI)))
                .ink()
                .width()
                .mm();
        double apart = set("\u0915\u0937", "own", List.of(own(DEVANAGARI)))
                .ink()
                .width()
                .mm();
        assertThat(joined).isLessThan(apart * 0.9);
        // The short i is typed after its consonant and stands before it: the word begins otherwise than without it.
        SetText ki = set("\u0915\u093F", "own", List.of(own(DEVANAGARI)));
        SetText ka = set("\u0915", "own", List.of(own(DEVANAGARI)));
        assertThat(ki.ink().width().mm()).isGreaterThan(ka.ink().width().mm() * 1.1);
    }

    @Test
    void thaiMarksStandOverTheirLetter() {
        assumeTrue(Files.exists(THAI), "needs Debian's fonts-tlwg-loma-ttf");
        // Ko kai with sara i and mai ek: two marks above take height, no width.
        SetText bare = set("\u0E01", "own", List.of(own(THAI)));
        SetText marked = set("\u0E01\u0E34\u0E48", "own", List.of(own(THAI)));
        assertThat(marked.ink().height().mm()).isGreaterThan(bare.ink().height().mm() * 1.3);
        assertThat(marked.ink().width().mm()).isLessThan(bare.ink().width().mm() * 1.25);
    }

    /** The bundled fonts have neither script, and no font of the computer is asked. */
    @ParameterizedTest
    @ValueSource(strings = {"\u0915", "\u0E01"})
    void withoutAFontOfItsOwnAScriptIsNeverSet(String text) {
        Outcome<Optional<SetText>> outcome =
                new TypeSetting(List.of()).set(field("sans"), text, Box.of(Length.mm(100), Length.mm(100)));
        assertThat(outcome).isInstanceOf(Outcome.Held.class);
    }

    private static FontFile own(Path file) {
        return new FontFile("own", file.toString(), Optional.of(file), "");
    }

    private static SetText set(String text, String font, List<FontFile> own) {
        Outcome<Optional<SetText>> outcome =
                new TypeSetting(own).set(field(font), text, Box.of(Length.mm(100), Length.mm(100)));
        return ((Outcome.Made<Optional<SetText>>) outcome).value().orElseThrow();
    }

    private static TextField field(String font) {
        return new TextField(
                "tern",
                "name",
                Optional.empty(),
                Anchor.BAND,
                0,
                0,
                100,
                100,
                1,
                font,
                Length.mm(SIZE),
                Length.ZERO,
                new Rgb(0, 0, 0),
                Align.CENTRE,
                Optional.empty(),
                Locale.ROOT,
                OptionalInt.empty(),
                false,
                "",
                "");
    }

    private static BufferedImage outlined(SetText set) {
        int side = (int) (100 * PER_MM);
        BufferedImage image = new BufferedImage(side, side, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, side, side);
        g.setColor(Color.BLACK);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setTransform(new AffineTransform(PER_MM, 0, 0, -PER_MM, 0, side));
        g.fill(set.outline().path());
        g.dispose();
        return image;
    }

    private BufferedImage byFreeType(String letter) throws IOException, InterruptedException {
        Path pdf = folder.resolve("letter.pdf");
        float points = 72 / 25.4f;
        try (PDDocument document = new PDDocument();
                InputStream font = TypeSetting.class.getResourceAsStream("/liberation/LiberationSans-Regular.ttf")) {
            PDPage page = new PDPage(new PDRectangle(60 * points, 60 * points));
            document.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                content.beginText();
                content.setFont(PDType0Font.load(document, font), (float) SIZE * points);
                content.newLineAtOffset(20 * points, 20 * points);
                content.showText(letter);
                content.endText();
            }
            try (OutputStream out = Files.newOutputStream(pdf)) {
                document.save(out);
            }
        }
        Programs.run(
                "pdftoppm",
                "-r",
                String.valueOf(DPI),
                "-gray",
                "-singlefile",
                "-png",
                pdf.toString(),
                folder.resolve("letter").toString());
        return ImageIO.read(folder.resolve("letter.png").toFile());
    }

    /** The dark pixels in their own bounding box. */
    private static boolean[][] ink(BufferedImage image) {
        int left = image.getWidth();
        int top = image.getHeight();
        int right = 0;
        int bottom = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                if ((image.getRGB(x, y) & 255) < 128) {
                    left = Math.min(left, x);
                    top = Math.min(top, y);
                    right = Math.max(right, x + 1);
                    bottom = Math.max(bottom, y + 1);
                }
            }
        }
        boolean[][] ink = new boolean[bottom - top][right - left];
        for (int y = top; y < bottom; y++) {
            for (int x = left; x < right; x++) {
                ink[y - top][x - left] = (image.getRGB(x, y) & 255) < 128;
            }
        }
        return ink;
    }

    /** How many of one's pixels have none of the other's near them. */
    private static int strays(boolean[][] one, boolean[][] other) {
        int strays = 0;
        for (int y = 0; y < one.length; y++) {
            for (int x = 0; x < one[y].length; x++) {
                strays += one[y][x] && !isNear(other, x, y) ? 1 : 0;
            }
        }
        return strays;
    }

    private static boolean isNear(boolean[][] ink, int x, int y) {
        for (int j = Math.max(0, y - CLOSE); j <= Math.min(ink.length - 1, y + CLOSE); j++) {
            for (int i = Math.max(0, x - CLOSE); i <= Math.min(ink[j].length - 1, x + CLOSE); i++) {
                if (ink[j][i]) {
                    return true;
                }
            }
        }
        return false;
    }
}
