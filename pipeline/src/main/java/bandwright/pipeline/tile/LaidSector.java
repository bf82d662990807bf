package bandwright.pipeline.tile;

import bandwright.rules.blanks.Sector;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A cone's picture as it lies on the printed paper: flipped left-right, turned, its box in its place.
 *
 * @param box the sector's bounding box on the paper
 */
public record LaidSector(Sector sector, Box box, Rotation rotation) {
    private static final int DEGREE_DECIMALS = 5;

    /** Where the arcs have their centre on the paper, which may be off the page. */
    public Length apexX() {
        return Length.mm(apex().getX());
    }

    public Length apexY() {
        return Length.mm(apex().getY());
    }

    private Point2D apex() {
        return toPaper().transform(new Point2D.Double(sector.apexX(), sector.apexY()), null);
    }

    /** The end that is the picture's left one as seen on the blank, counter-clockwise from the page's x axis, 0 to 360. */
    public BigDecimal startDegrees() {
        // Upright and flipped, the left end lies on the right of the axis.
        double start = sector.rimIsOuter() ? 90 - halfDegrees() : 270 + halfDegrees();
        BigDecimal degrees = rounded(start + rotation.degrees());
        return degrees.remainder(BigDecimal.valueOf(360)).setScale(DEGREE_DECIMALS, RoundingMode.UNNECESSARY);
    }

    /** From the picture's left end to its right one, counter-clockwise. */
    public BigDecimal sweepDegrees() {
        return rounded(sector.rimIsOuter() ? 2 * halfDegrees() : -2 * halfDegrees());
    }

    private double halfDegrees() {
        return StrictMath.toDegrees(sector.halfRadians());
    }

    private static BigDecimal rounded(double degrees) {
        return BigDecimal.valueOf(degrees).setScale(DEGREE_DECIMALS, RoundingMode.HALF_UP);
    }

    /** From the flipped picture's upright box, with its lower-left corner at the origin, to the paper; in millimetres. */
    public AffineTransform toPaper() {
        double width = sector.box().width().mm();
        double height = sector.box().height().mm();
        AffineTransform turned =
                switch (rotation) {
                    case R0 -> new AffineTransform();
                    case R90 -> new AffineTransform(0, 1, -1, 0, height, 0);
                    case R180 -> new AffineTransform(-1, 0, 0, -1, width, height);
                    case R270 -> new AffineTransform(0, -1, 1, 0, 0, width);
                };
        turned.preConcatenate(
                AffineTransform.getTranslateInstance(box.x().mm(), box.y().mm()));
        return turned;
    }
}
