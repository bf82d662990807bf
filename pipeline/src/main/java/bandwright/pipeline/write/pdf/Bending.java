package bandwright.pipeline.write.pdf;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.size.Layer;
import bandwright.rules.blanks.Sector;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.awt.geom.Rectangle2D;

/**
 * A picture that has to be computed anew, as it is bent for a cone: what PDF can't do by moving and stretching.
 *
 * @param place where the whole picture would lie in the flat band
 * @param shown what is printed of it, in the flat band
 * @param perMm pixels a millimetre of the bent picture
 */
public record Bending(ArtworkFile artwork, Box place, Box shown, Sector sector, double perMm) {
    private static final double MM_PER_INCH = 25.4;

    /**
     * How a layer is bent: with as many pixels an inch as the picture has where it is finest, on its smallest arc, or as
     * the shop allows.
     *
     * @param mostAnInch pixels an inch
     */
    public static Bending of(Layer.Picture layer, Sector sector, double mostAnInch) {
        Box place = layer.place();
        Box shown = place.shared(layer.clip());
        double smallest = Math.min(
                sector.radius(shown.y().mm()), sector.radius(shown.top().mm()));
        double narrowing =
                sector.middle().mm() / Math.max(smallest, sector.middle().mm() / 100);
        double across = layer.artwork().shownWidth() / place.width().mm() * narrowing;
        double up = layer.artwork().shownHeight() / place.height().mm();
        return new Bending(
                layer.artwork(), place, shown, sector, Math.min(mostAnInch / MM_PER_INCH, Math.max(across, up)));
    }

    /** Pixels of the bent picture. */
    int width() {
        return (int) Math.max(1, Math.ceil(bounds().getWidth() * perMm));
    }

    int height() {
        return (int) Math.max(1, Math.ceil(bounds().getHeight() * perMm));
    }

    /** Where the bent picture lies, in the sector's upright box: whole pixels from the left and from above. */
    public Box box() {
        Rectangle2D bounds = bounds();
        Length height = Length.mm(height() / perMm);
        return new Box(
                Length.mm(bounds.getMinX()),
                Length.mm(bounds.getMaxY()).minus(height),
                Length.mm(width() / perMm),
                height);
    }

    private Rectangle2D bounds() {
        return Bent.outline(shown, sector).path().getBounds2D();
    }
}
