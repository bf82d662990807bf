package bandwright.pipeline.artwork.vector;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The bundled fonts for letters in SVG, made known to Java under names of our own: a font of the same name that happens
 * to be on this computer is never taken. {@code Liberation Sans}, {@code sans} and {@code sans-serif} are one.
 */
final class SvgFonts {
    private static final String LIBERATION = "/liberation/Liberation";
    private static final String DEJAVU = "/net/sf/jasperreports/fonts/dejavu/DejaVuSans";
    private static final List<String> STYLES = List.of("-Regular", "-Bold", "-Italic", "-BoldItalic");

    private static final Map<String, String> IDS = Map.ofEntries(
            Map.entry("sans", "sans"),
            Map.entry("sans-serif", "sans"),
            Map.entry("liberation sans", "sans"),
            Map.entry("sans-bold", "sans-bold"),
            Map.entry("serif", "serif"),
            Map.entry("liberation serif", "serif"),
            Map.entry("serif-italic", "serif-italic"),
            Map.entry("mono", "mono"),
            Map.entry("monospace", "mono"),
            Map.entry("liberation mono", "mono"),
            Map.entry("wide", "wide"),
            Map.entry("dejavu sans", "wide"));

    /** What letters without a family are set in. */
    static final String USUAL = name("sans");

    private static final Map<String, Font> FONTS = new TreeMap<>();

    private SvgFonts() {}

    /** The name under which Java knows the first family of a list; empty if it isn't one of the bundled. */
    static Optional<String> find(String families) {
        String first = families.split(",", 2)[0].strip();
        first = first.replaceAll("^['\"]|['\"]$|!important", "").strip().toLowerCase(Locale.ROOT);
        return Optional.ofNullable(IDS.get(first)).map(SvgFonts::name);
    }

    private static String name(String id) {
        return "Bandwright " + id;
    }

    /** Whether a bundled font has all letters of a text, each of which stands for itself. */
    static synchronized boolean sets(String name, String text) {
        register();
        char[] letters = text.toCharArray();
        Font font = Objects.requireNonNull(FONTS.get(name), name);
        return font.canDisplayUpTo(text) < 0 && !Font.textRequiresLayout(letters, 0, letters.length);
    }

    /** Before anything asks Java for the families it knows. */
    static synchronized void register() {
        if (!FONTS.isEmpty()) {
            return;
        }
        for (String family : List.of("Sans", "Serif", "Mono")) {
            String name = name(family.toLowerCase(Locale.ROOT));
            STYLES.forEach(style -> register(name, style, LIBERATION + family + style + ".ttf"));
        }
        register(name("sans-bold"), "-Regular", LIBERATION + "Sans-Bold.ttf");
        register(name("serif-italic"), "-Regular", LIBERATION + "Serif-Italic.ttf");
        register(name("wide"), "-Regular", DEJAVU + ".ttf");
        register(name("wide"), "-Bold", DEJAVU + "-Bold.ttf");
    }

    private static void register(String name, String style, String file) {
        try (InputStream in = Objects.requireNonNull(SvgFonts.class.getResourceAsStream(file), file)) {
            byte[] renamed = SfntName.renamed(in.readAllBytes(), name, style.substring(1));
            Font font = Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(renamed));
            GraphicsEnvironment.getLocalGraphicsEnvironment().registerFont(font);
            FONTS.putIfAbsent(name, font);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FontFormatException e) {
            throw new IllegalStateException(file, e);
        }
    }
}
