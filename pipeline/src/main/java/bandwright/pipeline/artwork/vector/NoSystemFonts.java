package bandwright.pipeline.artwork.vector;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.jspecify.annotations.Nullable;

/**
 * Answers whoever asks for a font that a PDF doesn't bring: always the same bundled one. The PDF library would look
 * through all fonts of the computer and leave a file in the home folder.
 */
final class NoSystemFonts implements FontMapper {
    private static final String FILE = "/liberation/LiberationSans-Regular.ttf";

    private @Nullable TrueTypeFont font;

    private NoSystemFonts() {}

    /** From here on, for all PDFs that are drawn. */
    static void install() {
        Holder.install();
    }

    private static final class Holder {
        static {
            FontMappers.set(new NoSystemFonts());
        }

        private Holder() {}

        static void install() {
            // done when this class is loaded, once
        }
    }

    private synchronized TrueTypeFont font() {
        if (font == null) {
            try (InputStream in = Objects.requireNonNull(NoSystemFonts.class.getResourceAsStream(FILE), FILE)) {
                font = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return font;
    }

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String name, PDFontDescriptor descriptor) {
        return new FontMapping<>(font(), true);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String name, PDFontDescriptor descriptor) {
        return new FontMapping<>(font(), true);
    }

    @Override
    @SuppressWarnings("NullAway") // of the two fonts of a mapping one is there
    public CIDFontMapping getCIDFont(String name, PDFontDescriptor descriptor, PDCIDSystemInfo info) {
        return new CIDFontMapping(null, font(), true);
    }
}
