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
import java.util.LinkedHashSet;
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
    private static final Map<String, String> BUNDLED = Map.of(
            "sans", LIBERATION + "Sans-Regular.ttf",
            "sans-bold", LIBERATION + "Sans-Bold.ttf",
            "serif", LIBERATION + "Serif-Regular.ttf",
            "serif-italic", LIBERATION + "Serif-Italic.ttf",
            "mono", LIBERATION + "Mono-Regular.ttf",
            "wide", "/net/sf/jasperreports/fonts/dejavu/DejaVuSans.ttf");

    private final List<FontFile> own;
    private final Map<String, Font> read = new HashMap<>();

    TypeCase(List<FontFile> own) {
        this.own = List.copyOf(own);
    }

    /**
     * The fonts for a text, the wanted one first: what it lacks the next sets, a shop's own last.
     *
     * @param id a bundled font's, or one of fonts.csv; the rulebook has checked that it is there
     */
    List<Font> chain(String id) {
        Stream<String> ids =
                Stream.concat(Stream.of(id, "sans", "wide"), own.stream().map(FontFile::id));
        return new LinkedHashSet<>(ids.map(Names::fold).toList())
                .stream().map(this::font).toList();
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
