package bandwright.pipeline.type;

import bandwright.rules.designs.FontFile;
import bandwright.rules.table.Names;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.TextAttribute;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** The fonts that a run sets type in: the bundled ones and the shop's own, each read when first asked for. */
final class TypeCase {
    /** Type is shaped at this size and scaled: large enough that no hinting or rounding shows. */
    static final float EM = 1000;

    private static final String LIBERATION = "/liberation/Liberation";

    /** Emoji of one colour: what is left of them when the other fonts are asked. */
    private static final String SIGNS = "(signs)";

    private static final Map<String, String> BUNDLED = Map.of(
            "sans",
            LIBERATION + "Sans-Regular.ttf",
            "sans-bold",
            LIBERATION + "Sans-Bold.ttf",
            "serif",
            LIBERATION + "Serif-Regular.ttf",
            "serif-italic",
            LIBERATION + "Serif-Italic.ttf",
            "mono",
            LIBERATION + "Mono-Regular.ttf",
            "wide",
            "/net/sf/jasperreports/fonts/dejavu/DejaVuSans.ttf",
            SIGNS,
            "/META-INF/resources/webjars/fortawesome__fontawesome-free/6.5.1/webfonts/fa-solid-900.ttf");

    private final List<FontFile> own;
    private final Map<String, Font> read = new HashMap<>();
    private final Map<String, Font> matched = new HashMap<>();
    private final Map<String, Double> heights = new HashMap<>();

    TypeCase(List<FontFile> own) {
        this.own = List.copyOf(own);
    }

    /**
     * The fonts for a text, the wanted one first: what it lacks the next sets, a shop's own and the signs last. The
     * others are as much larger or smaller as makes their letters as high as the wanted one's: the small ones, or the
     * capitals of a text without small letters.
     *
     * @param id a bundled font's, or one of fonts.csv; the rulebook has checked that it is there
     */
    List<Font> chain(String id, String text) {
        boolean isSmall = text.codePoints().anyMatch(Character::isLowerCase);
        Stream<String> others = Stream.concat(
                Stream.concat(Stream.of("sans", "wide"), own.stream().map(FontFile::id)), Stream.of(SIGNS));
        String wanted = Names.fold(id);
        Font first = font(wanted);
        return Stream.concat(
                        Stream.of(first),
                        others.map(Names::fold)
                                .distinct()
                                .filter(other -> !other.equals(wanted))
                                .map(other -> matched(wanted, other, isSmall)))
                .toList();
    }

    private Font matched(String wanted, String other, boolean isSmall) {
        String letters = isSmall ? "x" : "H";
        return matched.computeIfAbsent(wanted + "\n" + other + "\n" + letters, key -> {
            double wish = height(wanted, letters);
            double is = height(other, letters);
            return wish > 0 && is > 0 ? font(other).deriveFont((float) (EM * wish / is)) : font(other);
        });
    }

    /** How high its letters stand over the line, of a thousand; 0 for a font without Latin ones, of which nobody knows. */
    private double height(String id, String letter) {
        return heights.computeIfAbsent(id + "\n" + letter, key -> {
            Font font = font(id);
            return font.canDisplay(letter.codePointAt(0))
                    ? -Shaping.ink(new Shaping(List.of(font)).line(letter, false))
                            .getMinY()
                    : 0;
        });
    }

    private Font font(String id) {
        return read.computeIfAbsent(id, this::open);
    }

    private Font open(String id) {
        Optional<Path> file = own.stream()
                .filter(font -> Names.same(font.id(), id))
                .findFirst()
                .flatMap(FontFile::path);
        try (InputStream in = file.isPresent() ? Files.newInputStream(file.get()) : bundled(id)) {
            return Font.createFont(Font.TRUETYPE_FONT, new BufferedInputStream(in))
                    .deriveFont(Map.of(
                            TextAttribute.SIZE,
                            EM,
                            TextAttribute.KERNING,
                            TextAttribute.KERNING_ON,
                            TextAttribute.LIGATURES,
                            TextAttribute.LIGATURES_ON));
        } catch (IOException | FontFormatException e) {
            throw new UnreadableFont(id, e);
        }
    }

    private static InputStream bundled(String id) {
        String file = Objects.requireNonNull(BUNDLED.get(id), "no font " + id);
        return Objects.requireNonNull(TypeCase.class.getResourceAsStream(file), "no font " + file);
    }

    /** A font's file that is no font: found when a text asks for it. */
    static final class UnreadableFont extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private final String id;

        UnreadableFont(String id, Exception cause) {
            super(cause);
            this.id = id;
        }

        String id() {
            return id;
        }
    }
}
