package bandwright.pipeline.artwork.vector;

import bandwright.rules.units.Rgb;
import java.awt.geom.Path2D;
import java.util.Optional;

/**
 * One shape of a flat colour, in the unit square of its artwork, y upwards.
 *
 * @param outline filled by its own winding rule; nobody changes it
 * @param opacity 0 to 1
 * @param clip nothing outside it is inked
 */
public record InkedShape(Path2D outline, Rgb colour, double opacity, Optional<Path2D> clip) {
    /** Whether it is filled where it winds an odd number of times. */
    public boolean isEvenOdd() {
        return outline.getWindingRule() == Path2D.WIND_EVEN_ODD;
    }
}
