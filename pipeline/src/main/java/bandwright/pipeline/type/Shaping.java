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
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/**
 * One line's outline by the JDK's own text engine: kerning, ligatures, joined and right-to-left scripts. Each character is
 * set in the first font that has it. The baseline is y = 0, y goes down, a thousand units are the type size.
 */
final class Shaping {
    /** Of a thousand units: curves are followed more finely than any printer prints. */
    private static final double FLATNESS = 0.1;

    private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);

    private final List<Font> fonts;

    Shaping(List<Font> fonts) {
        this.fonts = fonts;
    }

    /** The first character that no font has. */
    OptionalInt missing(String text) {
        return text.codePoints()
                .filter(c -> !isShapeless(c) && fonts.stream().noneMatch(font -> font.canDisplay(c)))
                .findFirst();
    }

    /** The fonts that its characters are set in. */
    Set<Font> fonts(String text) {
        Set<Font> used = new LinkedHashSet<>();
        Font font = fonts.get(0);
        for (int c : text.codePoints().filter(c -> !isShapeless(c)).toArray()) {
            font = fontFor(c, font);
            used.add(font);
        }
        return used;
    }

    Shape line(String text) {
        AttributedString attributed = new AttributedString(text);
        int from = 0;
        while (from < text.length()) {
            Font font = fontFor(text.codePointAt(from), fonts.get(0));
            int to = from + Character.charCount(text.codePointAt(from));
            while (to < text.length() && fontFor(text.codePointAt(to), font).equals(font)) {
                to += Character.charCount(text.codePointAt(to));
            }
            attributed.addAttribute(TextAttribute.FONT, font, from, to);
            from = to;
        }
        return new TextLayout(attributed.getIterator(), CONTEXT).getOutline(null);
    }

    /** Marks and joiners stay with what they belong to where that font can set them. */
    private Font fontFor(int codePoint, Font before) {
        boolean isMark = Character.getType(codePoint) == Character.NON_SPACING_MARK
                || Character.getType(codePoint) == Character.COMBINING_SPACING_MARK
                || isShapeless(codePoint);
        if (isMark && (isShapeless(codePoint) || before.canDisplay(codePoint))) {
            return before;
        }
        return fonts.stream()
                .filter(font -> font.canDisplay(codePoint))
                .findFirst()
                .orElse(before);
    }

    private static boolean isShapeless(int codePoint) {
        return Character.isWhitespace(codePoint) || Character.getType(codePoint) == Character.FORMAT;
    }

    /** The box of the ink: of the curves themselves, not of their control points. */
    static Rectangle2D ink(Shape shape) {
        Path2D flat = new Path2D.Double();
        PathIterator path = shape.getPathIterator(new AffineTransform(), FLATNESS);
        flat.append(path, false);
        return flat.getBounds2D();
    }
}
