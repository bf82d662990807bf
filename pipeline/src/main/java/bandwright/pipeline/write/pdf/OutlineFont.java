package bandwright.pipeline.write.pdf;

import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * A bundled typeface whose letters are drawn as outlines, so that no font is embedded or asked for. A character that it
 * lacks is drawn as the replacement character, never left out.
 */
public final class OutlineFont {
    private static final String FOLDER = "/com/formdev/flatlaf/fonts/roboto/";
    private static final int REPLACEMENT = 0xFFFD;

    private final String mark;
    private final TrueTypeFont font;
    private final CmapLookup letters;
    private final int unitsPerEm;
    private final int capHeight;
    private final Map<Integer, Letter> seen = new ConcurrentHashMap<>();

    /** One glyph: its number in the font, how far it steps on, and its outline as path operators, in font units. */
    record Letter(int id, int advance, String outline) {}

    private OutlineFont(String mark, String file) {
        this.mark = mark;
        try (InputStream in =
                Objects.requireNonNull(OutlineFont.class.getResourceAsStream(FOLDER + file), "no font " + file)) {
            font = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
            letters = font.getUnicodeCmapLookup();
            unitsPerEm = font.getUnitsPerEm();
            capHeight = font.getOS2Windows().getCapHeight();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static OutlineFont regular() {
        return Regular.FONT;
    }

    public static OutlineFont bold() {
        return Bold.FONT;
    }

    /** Parsed when first asked for: a run without sheets needs none. */
    private static final class Regular {
        static final OutlineFont FONT = new OutlineFont("R", "Roboto-Regular.ttf");
    }

    private static final class Bold {
        static final OutlineFont FONT = new OutlineFont("B", "Roboto-Bold.ttf");
    }

    /** The first letter of its glyphs' names in a file. */
    String mark() {
        return mark;
    }

    int unitsPerEm() {
        return unitsPerEm;
    }

    /** The height of a capital letter over the type size. */
    public double capShare() {
        return (double) capHeight / unitsPerEm;
    }

    /** The width of a line over the type size. */
    public double widthShare(String text) {
        long units = text.codePoints().mapToLong(c -> letter(c).advance()).sum();
        return (double) units / unitsPerEm;
    }

    Letter letter(int codePoint) {
        return seen.computeIfAbsent(codePoint, this::read);
    }

    private Letter read(int codePoint) {
        int id = letters.getGlyphId(Character.isISOControl(codePoint) ? ' ' : codePoint);
        if (id == 0) {
            id = letters.getGlyphId(REPLACEMENT);
        }
        if (id == 0) {
            id = letters.getGlyphId('?');
        }
        try {
            GlyphData glyph = font.getGlyph().getGlyph(id);
            String outline = glyph == null ? "" : operators(glyph.getPath().getPathIterator(null));
            return new Letter(id, font.getAdvanceWidth(id), outline);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** TrueType's quadratic curves as PDF's cubic ones, in whole font units: 1/2048 of the type size. */
    private static String operators(PathIterator path) {
        StringBuilder out = new StringBuilder();
        double[] p = new double[6];
        double x = 0;
        double y = 0;
        for (; !path.isDone(); path.next()) {
            switch (path.currentSegment(p)) {
                case PathIterator.SEG_MOVETO -> out.append(points(p[0], p[1])).append("m\n");
                case PathIterator.SEG_LINETO -> out.append(points(p[0], p[1])).append("l\n");
                case PathIterator.SEG_QUADTO ->
                    // A quadratic curve's control point stands at two thirds from either end (degree elevation).
                    out.append(points(x + (p[0] - x) * 2 / 3, y + (p[1] - y) * 2 / 3))
                            .append(points(p[2] + (p[0] - p[2]) * 2 / 3, p[3] + (p[1] - p[3]) * 2 / 3))
                            .append(points(p[2], p[3]))
                            .append("c\n");
                case PathIterator.SEG_CLOSE -> out.append("h\n");
                default -> throw new IllegalStateException("a TrueType outline has no cubic curves");
            }
            int last = path.currentSegment(p) == PathIterator.SEG_QUADTO ? 2 : 0;
            x = p[last];
            y = p[last + 1];
        }
        return out.isEmpty() ? "" : out.append("f\n").toString();
    }

    private static String points(double x, double y) {
        return Math.round(x) + " " + Math.round(y) + " ";
    }
}
