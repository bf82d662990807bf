package bandwright.pipeline.type;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.List;

/** Lines of plain words for pictures, in the bundled fonts and as outlines: no font of the computer is asked. */
public final class Captions {
    private final TypeCase fonts = new TypeCase(List.of());

    /** One line; its baseline begins at (0, 0), y grows downwards. */
    public synchronized Shape line(String text, boolean isBold, double size) {
        if (text.isBlank()) {
            return new Path2D.Double();
        }
        Shape shape =
                new Shaping(fonts.chain(isBold ? "sans-bold" : "sans", text)).line(text, Shaping.isRightToLeft(text));
        return AffineTransform.getScaleInstance(size / TypeCase.EM, size / TypeCase.EM)
                .createTransformedShape(shape);
    }
}
