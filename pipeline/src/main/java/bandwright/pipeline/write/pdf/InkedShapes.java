package bandwright.pipeline.write.pdf;

import bandwright.pipeline.artwork.vector.InkedShape;
import bandwright.pipeline.type.Outline;
import bandwright.rules.blanks.Sector;
import bandwright.rules.units.Box;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/**
 * Vector artwork drawn shape by shape, each in a flat colour of its own: bent for a cone, where every line and curve is
 * carried through the sector and halved until it lies within 0.01 mm of the true one, and in a printer's own inks. What
 * has no outline, a gradient or a picture, is never here: see {@link PreparedPictures#shapes}.
 */
public final class InkedShapes {
    private InkedShapes() {}

    /**
     * Draws it.
     *
     * @param place where the whole artwork would lie in the flat band
     * @param sector how the band is bent; empty = not at all
     */
    public static void draw(
            Canvas canvas, List<InkedShape> shapes, Box place, Optional<Sector> sector, Pictures pictures)
            throws IOException {
        AffineTransform toPlace = new AffineTransform(
                place.width().mm(),
                0,
                0,
                place.height().mm(),
                place.x().mm(),
                place.y().mm());
        for (InkedShape shape : shapes) {
            canvas.save();
            shape.clip().ifPresent(clip -> canvas.clip(placed(clip, toPlace, sector)));
            canvas.ink(pictures.ink(shape.colour()));
            if (shape.opacity() < 1) {
                canvas.opacity(shape.opacity());
            }
            Outline outline = placed(shape.outline(), toPlace, sector);
            if (shape.isEvenOdd()) {
                canvas.fillEvenOdd(outline);
            } else {
                canvas.fill(outline);
            }
            canvas.restore();
        }
    }

    private static Outline placed(Shape shape, AffineTransform toPlace, Optional<Sector> sector) {
        Outline flat = Outline.of(shape, toPlace);
        return sector.map(bent -> Bent.outline(flat, bent)).orElse(flat);
    }
}
