package bandwright.pipeline.type;

import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.TextAttribute;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.text.AttributedString;
import java.text.Bidi;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One line's outline by the JDK's own text engine: kerning, ligatures, joined and right-to-left scripts. What is seen as
 * one character, a letter with its marks, is set in the first font that has all of it. The baseline is y = 0, y goes
 * down, a thousand units are the type size.
 */
final class Shaping {
    /** Of a thousand units: curves are followed more finely than any printer prints. */
    private static final double FLATNESS = 0.1;

    private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);
    private static final Pattern CLUSTER = Pattern.compile("\\X");

    /** Stands where a program lost a character; fonts have it, and nobody ordered it. */
    private static final int LOST = 0xFFFD;

    private final List<Font> fonts;

    /** @param fonts the wanted one first */
    Shaping(List<Font> fonts) {
        this.fonts = fonts;
    }

    /** The first character that no font has. */
    OptionalInt missing(String text) {
        return text.codePoints().filter(c -> !isShapeless(c) && !isInAFont(c)).findFirst();
    }

    /** A private character means something in the wanted font only. */
    private boolean isInAFont(int c) {
        if (Character.getType(c) == Character.PRIVATE_USE) {
            return fonts.get(0).canDisplay(c);
        }
        return c != LOST && fonts.stream().anyMatch(font -> font.canDisplay(c));
    }

    /** The fonts that its characters are set in. */
    Set<Font> fonts(String text) {
        Set<Font> used = new LinkedHashSet<>();
        Matcher clusters = CLUSTER.matcher(text);
        while (clusters.find()) {
            if (!clusters.group().codePoints().allMatch(Shaping::isShapeless)) {
                used.add(fontFor(clusters.group(), fonts.get(0)));
            }
        }
        return used;
    }

    /**
     * A line of a text.
     *
     * @param isRightToLeft how the whole text runs
     */
    Shape line(String text, boolean isRightToLeft) {
        AttributedString attributed = new AttributedString(text);
        Matcher clusters = CLUSTER.matcher(text);
        Font font = fonts.get(0);
        int from = 0;
        while (clusters.find()) {
            Font next = fontFor(clusters.group(), font);
            if (!next.equals(font) && clusters.start() > from) {
                attributed.addAttribute(TextAttribute.FONT, font, from, clusters.start());
                from = clusters.start();
            }
            font = next;
        }
        attributed.addAttribute(TextAttribute.FONT, font, from, text.length());
        if (isRightToLeft) {
            attributed.addAttribute(TextAttribute.RUN_DIRECTION, TextAttribute.RUN_DIRECTION_RTL);
        }
        return new TextLayout(attributed.getIterator(), CONTEXT).getOutline(null);
    }

    /** By its first letter that has a direction (UAX #9: P2 and P3). */
    static boolean isRightToLeft(String text) {
        return Bidi.requiresBidi(text.toCharArray(), 0, text.length())
                && !new Bidi(text, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT).baseIsLeftToRight();
    }

    /** The first font that has all of it; empty if only several have it together. */
    private Optional<Font> fontOf(String cluster) {
        int[] needed = cluster.codePoints().filter(c -> !isShapeless(c)).toArray();
        return fonts.stream()
                .filter(font -> Arrays.stream(needed).allMatch(font::canDisplay))
                .findFirst();
    }

    /** A space stays with what is before it; of what no font has whole the letter decides. */
    private Font fontFor(String cluster, Font before) {
        if (cluster.codePoints().allMatch(Shaping::isShapeless)) {
            return before;
        }
        return fontOf(cluster)
                .or(() -> fonts.stream()
                        .filter(font -> font.canDisplay(cluster.codePointAt(0)))
                        .findFirst())
                .orElse(before);
    }

    /** Spaces, joiners, and the marks that ask for a sign's drawing in colour or plain. */
    private static boolean isShapeless(int c) {
        return Character.isWhitespace(c) || Character.getType(c) == Character.FORMAT || (c >= 0xFE00 && c <= 0xFE0F);
    }

    /** The box of the ink: of the curves themselves, not of their control points. */
    static Rectangle2D ink(Shape shape) {
        Path2D flat = new Path2D.Double();
        PathIterator path = shape.getPathIterator(new AffineTransform(), FLATNESS);
        flat.append(path, false);
        return flat.getBounds2D();
    }
}
