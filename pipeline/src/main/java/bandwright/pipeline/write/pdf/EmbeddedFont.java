package bandwright.pipeline.write.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * A bundled typeface embedded as a subset in one document, so that a list's words can be searched and copied. It is
 * parsed when first asked for; a character that it lacks is set as a question mark, never left out.
 */
public final class EmbeddedFont {
    private static final String ROBOTO = "/com/formdev/flatlaf/fonts/roboto/";
    private static final String DEJAVU = "/net/sf/jasperreports/fonts/dejavu/";
    private static final int UNKNOWN = '?';

    private final PDDocument document;
    private final String name;
    private final Supplier<Face> source;
    private final Map<Integer, Glyph> glyphs = new HashMap<>();
    private Optional<PDType0Font> embedded = Optional.empty();

    private record Glyph(int codePoint, int advance) {}

    private EmbeddedFont(PDDocument document, String name, Supplier<Face> source) {
        this.document = document;
        this.name = name;
        this.source = source;
    }

    public static EmbeddedFont plain(PDDocument document) {
        return new EmbeddedFont(document, "Plain", () -> Plain.FACE);
    }

    public static EmbeddedFont bold(PDDocument document) {
        return new EmbeddedFont(document, "Bold", () -> Bold.FACE);
    }

    /** Latin, Greek, Cyrillic, Arabic, Hebrew and many symbols. */
    public static EmbeddedFont wide(PDDocument document) {
        return new EmbeddedFont(document, "Wide", () -> Wide.FACE);
    }

    public boolean has(int codePoint) {
        return glyph(codePoint).codePoint == codePoint;
    }

    /** The width of a line over the type size. */
    public double widthShare(String text) {
        long units = 0;
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            units += glyph(text.codePointAt(i)).advance;
        }
        return (double) units / source.get().unitsPerEm;
    }

    String name() {
        return name;
    }

    PDType0Font embedded() {
        if (embedded.isEmpty()) {
            try {
                embedded = Optional.of(PDType0Font.load(document, source.get().font, true));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return embedded.get();
    }

    /** Embeds the letters that were set; after the last line, before the document is saved. */
    public void finish() throws IOException {
        if (embedded.isPresent()) {
            embedded.get().subset();
        }
    }

    /** The text as the document's codes, in hexadecimal digits; its glyphs join the subset. */
    String codes(String text) {
        PDType0Font font = embedded();
        StringBuilder settable = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            int codePoint = glyph(c).codePoint;
            settable.appendCodePoint(codePoint);
            font.addToSubset(codePoint);
        });
        try {
            return HexFormat.of().formatHex(font.encode(settable.toString()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Glyph glyph(int codePoint) {
        Glyph known = glyphs.get(codePoint);
        if (known == null) {
            known = source.get().glyph(codePoint);
            glyphs.put(codePoint, known);
        }
        return known;
    }

    /** A parsed font file, the same for every document. */
    private static final class Face {
        final TrueTypeFont font;
        final CmapLookup letters;
        final int unitsPerEm;

        Face(String resource) {
            try (InputStream in =
                    Objects.requireNonNull(EmbeddedFont.class.getResourceAsStream(resource), "no font " + resource)) {
                font = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
                // Measured: the Latin substitution tables cost half of a run's time and change nothing in our words.
                font.setEnableGsub(false);
                letters = font.getUnicodeCmapLookup();
                unitsPerEm = font.getUnitsPerEm();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        Glyph glyph(int codePoint) {
            int settable = letters.getGlyphId(codePoint) != 0 ? codePoint : UNKNOWN;
            try {
                return new Glyph(settable, font.getAdvanceWidth(letters.getGlyphId(settable)));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    private static final class Plain {
        static final Face FACE = new Face(ROBOTO + "Roboto-Regular.ttf");
    }

    private static final class Bold {
        static final Face FACE = new Face(ROBOTO + "Roboto-Bold.ttf");
    }

    private static final class Wide {
        static final Face FACE = new Face(DEJAVU + "DejaVuSans.ttf");
    }
}
