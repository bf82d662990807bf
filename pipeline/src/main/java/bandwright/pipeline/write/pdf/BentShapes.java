package bandwright.pipeline.write.pdf;

import bandwright.pipeline.artwork.vector.InkedShape;
import bandwright.pipeline.type.Outline;
import bandwright.rules.blanks.Sector;
import bandwright.rules.units.Box;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.util.List;

/**
 * Vector artwork bent for a cone, shape by shape: every line and curve is carried through the sector and halved until it
 * lies within 0.01 mm of the true one. What has no outline, a gradient or a picture, is never here: see
 * {@link PreparedPictures#shapes}.
 */
public final class BentShapes {
    private BentShapes() {}

    /**
     * Draws it.
     *
     * @param place where the whole artwork would lie in the flat band
     */
    public static void draw(Canvas canvas, List<InkedShape> shapes, Box place, Sector sector, Pictures pictures)
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
            shape.clip().ifPresent(clip -> canvas.clip(bent(clip, toPlace, sector)));
            canvas.ink(pictures.ink(shape.colour()));
            if (shape.opacity() < 1) {
                canvas.opacity(shape.opacity());
            }
            Outline outline = bent(shape.outline(), toPlace, sector);
            if (shape.isEvenOdd()) {
                canvas.fillEvenOdd(outline);
            } else {
                canvas.fill(outline);
            }
            canvas.restore();
        }
    }

    private static Outline bent(Shape shape, AffineTransform toPlace, Sector sector) {
        return Bent.outline(Outline.of(shape, toPlace), sector);
    }
}
